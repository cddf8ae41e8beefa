import { z } from 'zod';
import { readAs } from '@/lib/access/scoped-db';
import { getToken } from '@/lib/records/token/get-token.query';
import { listTokens } from '@/lib/records/token/list-tokens.query';
import { makeToken } from '@/lib/records/token/make-token.command';
import { makeTokenInput, withdrawTokenInput } from '@/lib/records/token/token.input';
import { withdrawToken } from '@/lib/records/token/withdraw-token.command';
import { command, type OperationRow } from './operation-rows';
import { arrange, now, type World } from './world';

const ofMember = async (world: World) =>
  arrange(world.people.member, makeTokenInput, makeToken, { name: 'Shed sensor', scope: 'write' });

const made = z.object({ id: z.string() });

/** A token is its maker's; the coordinator of the network sees that it is there and can withdraw it. */
export const tokenRows: readonly OperationRow[] = [
  command('records/token/make-token.command', 'yyy-o', makeTokenInput, makeToken, () => ({
    name: 'Shed sensor',
    scope: 'read',
  })),
  {
    ...command(
      'records/token/withdraw-token.command',
      'yy---',
      withdrawTokenInput,
      withdrawToken,
      () => null,
    ),
    prepare: async (world) => ({ id: (await ofMember(world)).id, revision: 1, reason: 'tried' }),
  },
  {
    file: 'records/token/get-token.query',
    may: 'yy---',
    prepare: ofMember,
    attempt: async (_world, actor, prepared) =>
      (await readAs(actor, (context) => getToken(context, made.parse(prepared).id, now))) !== undefined,
  },
  {
    file: 'records/token/list-tokens.query',
    may: 'yy---',
    prepare: ofMember,
    attempt: async (_world, actor, prepared) =>
      (await readAs(actor, (context) => listTokens(context, now))).some(
        ({ id }) => id === made.parse(prepared).id,
      ),
  },
];
