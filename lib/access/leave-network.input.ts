import { z } from 'zod';
import { leaveWordField } from './leave-word';

export const leaveNetworkInput = z.object({
  /** The network that the form named, '' for leaving Pinset with none. */
  networkId: z.string('missing').max(60, 'too-long'),
  word: leaveWordField,
});
