import 'server-only';
import { PrismaPg } from '@prisma/adapter-pg';
import { Pool } from 'pg';
import { PrismaClient } from './generated/client';

type Held = { pool: Pool; prisma: PrismaClient };
const holder = globalThis as typeof globalThis & { pinsetDatabase?: Held };

function connect(): Held {
  const connectionString = process.env.DATABASE_URL;
  if (!connectionString) throw new Error('DATABASE_URL is not set');
  const pool = new Pool({
    connectionString,
    max: 10,
    connectionTimeoutMillis: 10_000,
    idleTimeoutMillis: 60_000,
    keepAlive: true,
    // Prisma stores wrong instants when the connection's zone is not UTC.
    options: '-c TimeZone=UTC -c statement_timeout=15000',
  });
  // An idle connection that breaks is replaced at its next use; without a listener it would end the process.
  pool.on('error', (error) =>
    console.error(JSON.stringify({ level: 'warn', what: 'idle connection lost', why: error.message })),
  );
  const prisma = new PrismaClient({
    adapter: new PrismaPg(pool),
    transactionOptions: { maxWait: 10_000, timeout: 20_000 },
  });
  return { pool, prisma };
}

/** The one client of this process, as the application's own role. Use it only through `lib/access/scoped-db`. */
export function unscopedDatabase(): PrismaClient {
  holder.pinsetDatabase ??= connect();
  return holder.pinsetDatabase.prisma;
}

/** Ends all connections; for scripts and tests. */
export async function disconnect(): Promise<void> {
  const held = holder.pinsetDatabase;
  if (!held) return;
  delete holder.pinsetDatabase;
  await held.prisma.$disconnect();
  await held.pool.end();
}
