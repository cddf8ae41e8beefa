/** A process of its own that takes the turn to fit, says so, holds it for a while and says when it ends. */
import type { Actor } from '@/lib/access/actor';
import { inFitTurn, type TurnTimes } from '@/lib/analysis/fitted/fit-turn';
import { disconnect } from '@/lib/database/client';

const [who = '', times = '', holds = ''] = process.argv.slice(2);
// As the test wrote them.
const actor = JSON.parse(who) as Actor;
await inFitTurn(
  actor,
  async () => {
    console.log('starts', Date.now());
    await new Promise((resolve) => setTimeout(resolve, Number(holds)));
    console.log('ends', Date.now());
  },
  JSON.parse(times) as TurnTimes,
);
await disconnect();
