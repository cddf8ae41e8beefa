/** Prints the one-time link of the first coordinator while there is no network yet. */
import { hashToken, newToken } from '@/lib/access/token';
import { connectTo } from '@/lib/database/startup-check';

const owner = await connectTo('DATABASE_OWNER_URL', process.env.DATABASE_OWNER_URL);
try {
  const { rows } = await owner.query<{ empty: boolean }>('SELECT app.network_count() = 0 AS empty');
  if (rows[0]?.empty) {
    const token = newToken();
    await owner.query("SELECT app.make_setup_link($1, '7 days')", [hashToken(token)]);
    console.log('There is no network yet. Its first coordinator signs up here, once, within 7 days:');
    console.log(`  ${process.env.NEXTAUTH_URL}/setup/${token}`);
  }
} finally {
  await owner.end();
}
