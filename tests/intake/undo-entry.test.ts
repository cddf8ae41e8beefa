import { describe, expect, it } from 'vitest';
import type { Entry } from '@/lib/offline/entry';
import { harvestEntry } from '../support/entries';
import { entryWorld } from '../support/entry-world';

const { world, post, harvest, withMass, count, admin } = await entryWorld();

describe('an entry that takes another back', () => {
  const undo = (of: Entry, changes: Partial<Entry> = {}): Entry =>
    harvest({ kind: 'undo', input: { entryId: of.id }, madeAt: new Date().toISOString(), ...changes });

  it('voids the record with a reason of its own and leaves it in the history', async () => {
    const entry = harvest();
    await post(entry);
    const { status, body } = await post(undo(entry));
    expect(status).toBe(200);
    expect(body).toMatchObject({ recordId: entry.id, revision: 2 });
    expect(await count("weighing where id = $1 and void_reason like 'Taken back%'", [entry.id])).toBe(1);
  });

  it('is answered the same when it is sent again', async () => {
    const entry = harvest();
    await post(entry);
    const back = undo(entry);
    const first = await post(back);
    expect(await post(back)).toMatchObject({ status: 200, body: first.body });
  });

  it('is refused more than 15 minutes later, by both clocks', async () => {
    const entry = harvest();
    await post(entry);
    await admin.query(
      "alter table entry_receipt disable row level security; update entry_receipt set saved_at = saved_at - interval '16 minutes'",
    );
    await admin.query('alter table entry_receipt enable row level security');
    expect((await post(undo(entry))).status).toBe(422);
    const pressedInTime = undo(entry, { madeAt: new Date(Date.now() - 10 * 60_000).toISOString() });
    expect((await post(pressedInTime)).status).toBe(200);
  });

  it('is refused to anybody else', async () => {
    const entry = harvest();
    await post(entry);
    const { coordinator } = world.people;
    const { status } = await post({ ...undo(entry), personId: coordinator.personId }, coordinator);
    expect(status).toBe(404);
  });

  it('is refused once somebody has changed the record', async () => {
    const entry = harvest();
    await post(entry);
    const input = { ...withMass('1.63'), id: entry.id, revision: 1, reason: 'Scale was wrong' };
    await post(harvestEntry(world.people.coordinator, world.batchId, { input }), world.people.coordinator);
    expect((await post(undo(entry))).status).toBe(422);
  });
});
