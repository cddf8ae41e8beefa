import { Client } from 'pg';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { testDatabase } from '../support/database';
import { mayBeCalled } from './called-functions';

const { app, superuser } = await testDatabase();
const admin = new Client({ connectionString: superuser });
const asApp = new Client({ connectionString: app });

beforeAll(async () => {
  await admin.connect();
  await asApp.connect();
});
afterAll(async () => {
  await admin.end();
  await asApp.end();
});

/** Tables that belong to no network, each with policies of its own. */
const globalTables = ['person', 'person_contact', 'account', 'session', 'setup_link'];
const outside = ['_prisma_migrations'];

async function column<T>(sql: string, values: unknown[] = []): Promise<T[]> {
  const { rows } = await admin.query(sql, values);
  return rows.map((row: Record<string, T>) => Object.values(row)[0] as T);
}

const tables = () =>
  column<string>(
    `select relname::text from pg_class c join pg_namespace n on n.oid = c.relnamespace
     where n.nspname = 'public' and c.relkind = 'r' order by 1`,
  );

describe('every table of the database', () => {
  it('is a table of a network, or a named exception', async () => {
    const ofNetworks = await column<string>(
      `select table_name::text from information_schema.columns where table_schema = 'public' and column_name = 'network_id'`,
    );
    const strangers = (await tables()).filter(
      (table) => ![...ofNetworks, ...globalTables, ...outside, 'network'].includes(table),
    );
    expect(strangers).toEqual([]);
  });

  it('has row-level security enabled and forced', async () => {
    const open = await column<string>(
      `select relname::text from pg_class c join pg_namespace n on n.oid = c.relnamespace
       where n.nspname = 'public' and c.relkind = 'r' and relname <> '_prisma_migrations'
         and not (relrowsecurity and relforcerowsecurity)`,
    );
    expect(open).toEqual([]);
  });

  it('carries its network in the primary key and in every foreign key between networks', async () => {
    const loose = await column<string>(
      `select c.conrelid::regclass || '.' || c.conname from pg_constraint c
       where c.connamespace = 'public'::regnamespace and c.contype in ('p', 'f') and c.conrelid::regclass::text not in ('network', 'person', 'person_contact', 'account', 'session', 'setup_link', '_prisma_migrations')
         and (c.contype = 'p' or c.confrelid::regclass::text not in ('network', 'person'))
         and not exists (select 1 from pg_attribute a where a.attrelid = c.conrelid and a.attnum = any (c.conkey) and a.attname = 'network_id')`,
    );
    expect(loose).toEqual([]);
  });

  it('cannot be deleted from, truncated or owned by the application', async () => {
    const rights = await column<string>(
      `select table_name || ' ' || privilege_type from information_schema.role_table_grants
       where grantee = 'pinset_app' and privilege_type in ('DELETE', 'TRUNCATE', 'TRIGGER', 'REFERENCES')`,
    );
    const owned = await column<string>(
      `select relname::text from pg_class where relowner = (select oid from pg_roles where rolname = 'pinset_app')`,
    );
    expect([...rights, ...owned]).toEqual([]);
  });

  it('answers nothing to a query without an actor', async () => {
    const answered: string[] = [];
    for (const table of (await tables()).filter((name) => ![...outside, 'setup_link'].includes(name))) {
      const { rows } = await asApp.query(`select count(*)::int as n from "${table}"`);
      if (rows[0]?.n !== 0) answered.push(table);
    }
    expect(answered).toEqual([]);
  });
});

describe('the history', () => {
  it('cannot be written by the application', async () => {
    const rights = await column<string>(
      `select privilege_type::text from information_schema.role_table_grants
       where grantee = 'pinset_app' and table_name = 'history' order by 1`,
    );
    expect(rights).toEqual(['SELECT']);
  });

  it('is written by a trigger on every table of a network', async () => {
    const without = await column<string>(
      `select c.relname::text from pg_class c join pg_namespace n on n.oid = c.relnamespace
       where n.nspname = 'public' and c.relkind = 'r'
         and c.relname <> all (array['person', 'person_contact', 'account', 'session', 'setup_link', '_prisma_migrations', 'history', 'entry_receipt', 'fitted_result', 'fit_turn', 'batch_outcome', 'outcome_summary', 'outcome_site_total', 'outcome_network_total', 'outcome_due', 'outcome_version', 'outcome_site_version', 'participant_contact', 'digest_sent', 'api_receipt', 'report_ground', 'report_link_visit', 'intake_content', 'intake_row'])
         and not exists (select 1 from pg_trigger t where t.tgrelid = c.oid and t.tgname = 'write_history')`,
    );
    expect(without).toEqual([]);
  });
});

describe('a receipt of an entry', () => {
  it('can be written once and read, and needs no history since it never changes', async () => {
    const rights = await column<string>(
      `select privilege_type::text from information_schema.role_table_grants
       where grantee = 'pinset_app' and table_name = 'entry_receipt' order by 1`,
    );
    expect(rights).toEqual(['INSERT', 'SELECT']);
  });
});

describe('a token', () => {
  it('is only ever withdrawn, and its hash is read by nobody', async () => {
    const rights = await column<string>(
      `select privilege_type || ' ' || column_name from information_schema.column_privileges
       where grantee = 'pinset_app' and table_name = 'api_token'
         and (privilege_type = 'UPDATE' or column_name = 'secret_hash') order by 1`,
    );
    expect(rights).toEqual(['INSERT secret_hash', 'UPDATE void_reason', 'UPDATE voided_at']);
  });
});

describe('an answer to a token', () => {
  it('can be written once and read, and needs no history since it never changes', async () => {
    const rights = await column<string>(
      `select privilege_type::text from information_schema.role_table_grants
       where grantee = 'pinset_app' and table_name = 'api_receipt' order by 1`,
    );
    expect(rights).toEqual(['INSERT', 'SELECT']);
  });
});

describe('a digest that went out', () => {
  it('can be written once and read, and needs no history since it never changes', async () => {
    const rights = await column<string>(
      `select privilege_type::text from information_schema.role_table_grants
       where grantee = 'pinset_app' and table_name = 'digest_sent' order by 1`,
    );
    expect(rights).toEqual(['INSERT', 'SELECT']);
  });
});

describe('the file that a table came in', () => {
  it('can be written once and read, and needs no history since it never changes', async () => {
    const rights = await column<string>(
      `select privilege_type::text from information_schema.role_table_grants
       where grantee = 'pinset_app' and table_name = 'intake_content' order by 1`,
    );
    expect(rights).toEqual(['INSERT', 'SELECT']);
  });
});

describe('what the sums of a report were made of', () => {
  it('can be written once and read, and needs no history since it never changes', async () => {
    const rights = await column<string>(
      `select privilege_type::text from information_schema.role_table_grants
       where grantee = 'pinset_app' and table_name = 'report_ground' order by 1`,
    );
    expect(rights).toEqual(['INSERT', 'SELECT']);
  });
});

describe('a visit by a link', () => {
  it('is written by the link alone, and needs no history since it never changes', async () => {
    const rights = await column<string>(
      `select privilege_type::text from information_schema.role_table_grants
       where grantee = 'pinset_app' and table_name = 'report_link_visit' order by 1`,
    );
    expect(rights).toEqual(['SELECT']);
  });
});

describe('a fitted result', () => {
  it('is overwritten and needs no history, since it can be worked out again from the records', async () => {
    const rights = await column<string>(
      `select privilege_type::text from information_schema.role_table_grants
       where grantee = 'pinset_app' and table_name = 'fitted_result' order by 1`,
    );
    expect(rights).toEqual(['INSERT', 'SELECT', 'UPDATE']);
  });
});

describe('what is kept of batches', () => {
  it('is only read by the application, and needs no history, since it follows from the records', async () => {
    const rights = await column<string>(
      `select table_name || ' ' || privilege_type from information_schema.role_table_grants where grantee = 'pinset_app'
         and table_name in ('batch_outcome', 'outcome_summary', 'outcome_site_total', 'outcome_network_total', 'outcome_due', 'outcome_version', 'outcome_site_version') order by 1`,
    );
    expect(rights).toEqual([
      'batch_outcome SELECT',
      'outcome_due SELECT',
      'outcome_network_total SELECT',
      'outcome_site_total SELECT',
      'outcome_site_version SELECT',
      'outcome_summary SELECT',
      'outcome_version SELECT',
    ]);
  });
});

describe('the application role', () => {
  it('is neither owner, superuser nor able to bypass row policies', async () => {
    const { rows } = await admin.query(
      `select rolsuper, rolbypassrls, rolcreaterole from pg_roles where rolname = 'pinset_app'`,
    );
    expect(rows).toEqual([{ rolsuper: false, rolbypassrls: false, rolcreaterole: false }]);
  });

  it('may call the look-ups before sign-in and none of the operator', async () => {
    const allowed = await column<string>(
      `select p.proname::text from pg_proc p join pg_namespace n on n.oid = p.pronamespace
       where n.nspname = 'app' and p.prosecdef and has_function_privilege('pinset_app', p.oid, 'EXECUTE') order by 1`,
    );
    expect(allowed).toEqual(mayBeCalled);
  });
});
