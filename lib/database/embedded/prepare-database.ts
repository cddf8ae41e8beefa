import { readFileSync } from 'node:fs';
import path from 'node:path';
import { Client } from 'pg';
import { databaseUrls } from './database-urls';
import type { Passwords } from './passwords';

const rolesFile = path.resolve(import.meta.dirname, '../roles.sql');

/** Makes the database "pinset" with its roles unless both exist. Handing it to its owner is the last step. */
export async function prepareDatabase(passwords: Passwords, port: number): Promise<void> {
  const server = new Client({ connectionString: databaseUrls(passwords, port, 'postgres').superuser });
  await server.connect();
  try {
    const { rows } = await server.query<{ owner: string }>(
      "SELECT pg_get_userbyid(datdba) AS owner FROM pg_database WHERE datname = 'pinset'",
    );
    if (rows[0]?.owner === 'pinset_owner') return;
    if (rows.length === 0) await server.query('CREATE DATABASE pinset');
  } finally {
    await server.end();
  }
  await giveRoles(passwords, port, 'pinset');
}

/** Applies roles.sql to `database` and sets the passwords, in one transaction. */
export async function giveRoles(passwords: Passwords, port: number, database: string): Promise<void> {
  const client = new Client({ connectionString: databaseUrls(passwords, port, database).superuser });
  await client.connect();
  try {
    const signIn = (['pinset_owner', 'pinset_app'] as const)
      .map((role) => `ALTER ROLE ${role} PASSWORD ${client.escapeLiteral(passwords[role])};`)
      .join('\n');
    await client.query(`${readFileSync(rolesFile, 'utf8')}\n${signIn}`);
  } finally {
    await client.end();
  }
}
