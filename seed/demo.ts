import { writeFileSync } from 'node:fs';
import { disconnect } from '@/lib/database/client';
import { todayInZone } from '@/lib/growing/calendar-date';
import { seedLarkmoor } from './larkmoor';
import { seedSaltbrook } from './saltbrook';
import { storyZone } from './write/make-network';

/** Fills an empty database with the demo networks and leaves the sign-ins in the file named by PINSET_SIGN_INS. */
const today = todayInZone(storyZone, new Date());
try {
  const signIns = [...(await seedLarkmoor(today)), await seedSaltbrook(today)];
  const file = process.env.PINSET_SIGN_INS;
  if (file) writeFileSync(file, JSON.stringify(signIns, null, 2), { mode: 0o600 });
} finally {
  await disconnect();
}
