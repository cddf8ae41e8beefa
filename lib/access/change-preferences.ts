import 'server-only';
import type { z } from 'zod';
import type { Person } from './actor';
import type { preferencesInput } from './preferences.input';
import { asPerson } from './scoped-db';

/** How a person is called and likes to read: language, number region and units. */
export async function changePreferences(
  person: Person,
  input: z.output<typeof preferencesInput>,
): Promise<void> {
  const { name, ...reading } = input;
  await asPerson(person.personId, async (db) => {
    await db.person.updateMany({ where: { id: person.personId }, data: reading });
    await db.personContact.updateMany({ where: { personId: person.personId }, data: { name } });
  });
}
