import { randomUUID } from 'node:crypto';
import { describe, expect, it } from 'vitest';
import { harvestEntry } from '../support/entries';
import { entryWorld } from '../support/entry-world';

const { world, post, harvest, withMass, count, admin } = await entryWorld();
const weighings = (id: string) => count('weighing where id = $1', [id]);

describe('an entry of a phone', () => {
  it('is saved under its own id, said to come from a phone, with a receipt', async () => {
    const entry = harvest();
    const { status, body } = await post(entry);
    expect(status).toBe(200);
    expect(body).toMatchObject({ kind: 'saved', recordId: entry.id, revision: 1 });
    expect(await count("weighing where id = $1 and origin = 'offline'", [entry.id])).toBe(1);
    expect(await count('entry_receipt where key = $1 and entry_id = $2', [entry.key, entry.id])).toBe(1);
  });

  it('gets its first answer again, word for word, when it is sent again', async () => {
    const entry = harvest();
    const first = await post(entry);
    const again = await post(entry);
    expect(again).toMatchObject({ status: 200, body: first.body });
    expect(await weighings(entry.id)).toBe(1);
  });

  it('has one effect when it arrives five times at once', async () => {
    const entry = harvest();
    const answers = await Promise.all(Array.from({ length: 5 }, () => post(entry)));
    expect(answers.map(({ status }) => status)).toEqual([200, 200, 200, 200, 200]);
    expect(new Set(answers.map(({ body }) => JSON.stringify(body))).size).toBe(1);
    expect(await weighings(entry.id)).toBe(1);
  });

  it('is refused when its key was used for another content', async () => {
    const entry = harvest();
    await post(entry);
    const { status, body } = await post({ ...entry, input: withMass('2') });
    expect(status).toBe(422);
    expect(body.type).toBe('tag:pinset,2026:problem/refused');
    expect(await count('weighing where id = $1 and fresh_grams = 1360', [entry.id])).toBe(1);
  });

  it('has one record under a new key, and the same answer where nothing else changed', async () => {
    const entry = harvest();
    const first = await post(entry);
    expect(await post({ ...entry, key: randomUUID() })).toMatchObject({ status: 200, body: first.body });
    expect(await weighings(entry.id)).toBe(1);
  });

  it('shows both versions when its first wording was saved and another follows', async () => {
    const entry = harvest();
    await post(entry);
    const { status, body } = await post({ ...entry, key: randomUUID(), input: withMass('1.63') });
    expect(status).toBe(412);
    expect(body).toMatchObject({
      kind: 'conflict',
      revision: 1,
      changedBy: 'Ives Marrow',
      fields: [
        {
          label: 'Fresh mass',
          theirs: expect.stringMatching(/^1\.36\skg/),
          yours: expect.stringMatching(/^1\.63\skg/),
        },
      ],
    });
  });

  it('corrects the record once it names the revision that it has seen', async () => {
    const entry = harvest();
    await post(entry);
    const input = { ...withMass('1.63'), revision: 1, reason: 'Read the scale wrong' };
    const { status, body } = await post({ ...entry, key: randomUUID(), input });
    expect(status).toBe(200);
    expect(body).toMatchObject({ recordId: entry.id, revision: 2 });
    const reasons = await admin.query(
      "select reason from history where record_id = $1 and action = 'changed'",
      [entry.id],
    );
    expect(reasons.rows).toEqual([{ reason: 'Read the scale wrong' }]);
  });

  it('is asked about when it is implausible, and saved once the question is answered', async () => {
    const input = withMass('25');
    const asked = await post(harvest({ input }));
    expect(asked.status).toBe(409);
    expect(asked.body).toMatchObject({ kind: 'asked' });
    const codes = (asked.body.questions as { code: string; text: string }[]).map(({ code }) => code);
    expect((await post(harvest({ input, confirmed: codes }))).status).toBe(200);
  });

  it('is refused in the language of its person, with the field that is wrong', async () => {
    const input = { ...withMass('1'), weighedOn: '2026-03-01' };
    const { status, body, headers } = await post(harvest({ input }), {
      ...world.people.member,
      language: 'es',
      region: 'es-US',
    });
    expect(status).toBe(422);
    expect(headers.get('content-type')).toBe('application/problem+json');
    expect(body).toMatchObject({
      kind: 'refused',
      errors: [{ field: 'weighedOn', text: expect.stringMatching(/día|fecha/) }],
    });
  });

  it('is not there for a member of another site', async () => {
    const { neighbour } = world.people;
    const { status } = await post(harvestEntry(neighbour, world.batchId), neighbour);
    expect(status).toBe(404);
  });

  it.each([
    ['finding', { foundOn: '2026-04-20', units: 1, sign: 'green', stage: 'colonising', action: 'isolated' }],
    ['check', { kind: 'pins_seen', checkedOn: '2026-05-01' }],
    ['look', { lookedOn: '2026-04-22' }],
    ['loss', { lostOn: '2026-04-23', units: 1, cause: 'dried_out' }],
  ] as const)('can be a %s', async (kind, input) => {
    const { status, body } = await post(harvest({ kind, input: { batchId: world.batchId, ...input } }));
    expect(body).toMatchObject({ kind: 'saved' });
    expect(status).toBe(200);
  });
});
