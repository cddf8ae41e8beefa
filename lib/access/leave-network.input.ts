import { z } from 'zod';
import { leaveWordField } from './leave-word';

export const leaveNetworkInput = z.object({ word: leaveWordField });
