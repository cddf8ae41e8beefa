import { readAs } from '@/lib/access/scoped-db';
import { newId } from '@/lib/base/new-id';
import { answerSignal } from '@/lib/records/signal/answer-signal.command';
import { answerSignalInput } from '@/lib/records/signal/answer-signal.input';
import { chooseDigest } from '@/lib/records/signal/choose-digest.command';
import { chooseDigestInput } from '@/lib/records/signal/choose-digest.input';
import { getDigestChoice } from '@/lib/records/signal/get-digest-choice.query';
import { listSignalAnswers } from '@/lib/records/signal/list-signal-answers.query';
import { command, type OperationRow } from './operation-rows';
import { arrange } from './world';

const key = 'lot:0198f2c4-0000-7000-8000-000000000001';

/** Answers to signals are the coordinators'; the choice of the digest is a coordinator's own. */
export const signalRows: readonly OperationRow[] = [
  command('records/signal/answer-signal.command', 'y---o', answerSignalInput, answerSignal, () => ({
    signalKey: `lot:${newId()}`,
    answer: 'explained',
    words: 'A new maker',
  })),
  {
    file: 'records/signal/list-signal-answers.query',
    may: 'y----',
    prepare: (world) =>
      arrange(world.people.coordinator, answerSignalInput, answerSignal, { signalKey: key, answer: 'seen' }),
    attempt: async (_world, actor) =>
      (await readAs(actor, (context) => listSignalAnswers(context, [key]))).size > 0,
  },
  command('records/signal/choose-digest.command', 'y---o', chooseDigestInput, chooseDigest, () => ({
    wanted: 'yes',
  })),
  {
    file: 'records/signal/get-digest-choice.query',
    may: 'y---o',
    // Each coordinator sees the own choice, in the own network.
    prepare: async (world) => {
      for (const chooser of [world.people.coordinator, world.people.stranger])
        await arrange(chooser, chooseDigestInput, chooseDigest, { wanted: 'yes' });
    },
    attempt: async (_world, actor) => (await readAs(actor, getDigestChoice)) === true,
  },
];
