import { describe, expect, it } from 'vitest';
import { runAs } from '@/lib/access/run-command';
import { readAs } from '@/lib/access/scoped-db';
import { correctTraining } from '@/lib/records/training/correct-training.command';
import { getTraining } from '@/lib/records/training/get-training.query';
import { lastQuestions } from '@/lib/records/training/last-questions.query';
import { correctTrainingInput } from '@/lib/records/training/training.input';
import { testDay } from '../../support/bags';
import { testDatabase } from '../../support/database';
import { growers } from '../../support/growers';
import { historyOf } from '../../support/shed';
import { addPerson, idOf, train } from './programme-records';

const { superuser } = await testDatabase();
const { coordinator, member, neighbour, millLane, quarry } = await growers(superuser);

const see = (id: string) => readAs(member, (context) => getTraining(context, id));
const usual = { heldOn: '2026-05-05', title: 'Clean hands', topic: 'hygiene' };
const correct = (raw: object) =>
  runAs(
    member,
    correctTrainingInput,
    correctTraining,
    { reason: 'told', ...usual, ...raw },
    { now: testDay },
  );

const question = { wording: 'I can pasteurise straw', scaleMost: '5', mostLabel: 'surely' };

describe('a training', () => {
  it('takes people by name, adds those who are new, and counts heads beside them', async () => {
    const known = idOf(await addPerson(member, millLane, 'Kestrel Moss'));
    const id = idOf(
      await train(member, millLane, {
        ...{ participants: known, newNames: 'Lark Penn\n\nlark penn\nMoss Reed ', newCounted: 'yes' },
        headCount: '7',
      }),
    );
    expect(await see(id)).toMatchObject({ named: 3, attendances: 7, headCount: 7 });
    expect((await see(id))?.people.map(({ name }) => name)).toEqual([
      'Kestrel Moss',
      'lark penn',
      'Moss Reed',
    ]);
  });

  it('of fewer heads than names, of nobody, or on a day to come is refused', async () => {
    expect(await train(member, millLane, { headCount: '1', newNames: 'A B\nC D' })).toMatchObject({
      errors: [{ field: 'headCount', code: 'fewer-than-named', values: { named: 2 } }],
    });
    expect(await train(member, millLane, { headCount: '' })).toMatchObject({
      errors: [{ field: 'headCount', code: 'nobody-came' }],
    });
    expect(await train(member, millLane, { heldOn: '2026-05-21' })).toMatchObject({
      errors: [{ field: 'heldOn', code: 'future-date' }],
    });
  });

  it('keeps answers before and after as counts of each point of the scale', async () => {
    const id = idOf(
      await train(member, millLane, {
        questions: { 0: { ...question, before: '1 2, 2;3', after: '4 5 5' } },
      }),
    );
    expect((await see(id))?.questions).toEqual([
      {
        ...{ wording: 'I can pasteurise straw', scaleMost: 5, leastLabel: null, mostLabel: 'surely' },
        ...{ before: [1, 2, 1, 0, 0], after: [0, 0, 0, 1, 2] },
      },
    ]);
    expect(await readAs(member, lastQuestions)).toMatchObject([{ wording: 'I can pasteurise straw' }]);
  });

  it('refuses an answer outside the scale and one that is no number, naming the box', async () => {
    expect(
      await train(member, millLane, { questions: { 0: { ...question, before: '1 6', after: 'x' } } }),
    ).toMatchObject({
      errors: [
        { field: 'questions.0.before', code: 'answer-outside-scale', values: { most: 5, answer: 6 } },
        { field: 'questions.0.after', code: 'answers-unreadable' },
      ],
    });
  });

  it('is put right: who is not ticked did not come, who is new is added, and the old answers stay voided', async () => {
    const [one, two] = [
      idOf(await addPerson(member, millLane, 'Nettle Bay')),
      idOf(await addPerson(member, millLane, 'Orrin Sedge')),
    ];
    const id = idOf(
      await train(member, millLane, {
        participants: one,
        headCount: '',
        questions: [{ ...question, before: '3' }],
      }),
    );
    const raw = { id, revision: 1, participants: two, headCount: '', newNames: 'Pip Yarrow' };
    expect((await correct(raw)).kind).toBe('ok');
    const seen = await see(id);
    expect(seen?.people.map(({ name }) => name)).toEqual(['Orrin Sedge', 'Pip Yarrow']);
    expect(seen?.questions).toEqual([]);
    expect(await correct(raw)).toEqual({ kind: 'conflict', current: 2 });
    expect(await historyOf(coordinator, id)).toHaveLength(1);
  });

  it('keeps people of a site out of sight when a member puts it right, and counts them', async () => {
    const theirs = idOf(await addPerson(neighbour, quarry, 'Quill Ember'));
    const id = idOf(await train(coordinator, millLane, { participants: theirs, headCount: '' }));
    expect(await see(id)).toMatchObject({ named: 1, people: [] });
    expect((await correct({ id, revision: 1, headCount: '', title: 'Cleaner hands' })).kind).toBe('ok');
    expect(await see(id)).toMatchObject({ named: 1, title: 'Cleaner hands' });
    expect(await train(member, millLane, { participants: theirs })).toMatchObject({
      errors: [{ field: 'participants', code: 'not-an-option' }],
    });
  });

  it("is not seen by another site's member", async () => {
    const id = idOf(await train(member, millLane));
    expect(await readAs(neighbour, (context) => getTraining(context, id))).toBeUndefined();
  });
});
