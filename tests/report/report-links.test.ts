import { Client } from 'pg';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { readAs } from '@/lib/access/scoped-db';
import { getReport } from '@/lib/report/get-report.query';
import { makeLinkInput, withdrawLinkInput } from '@/lib/report/link/link.input';
import { listLinks } from '@/lib/report/link/list-links.query';
import { makeLink } from '@/lib/report/link/make-link.command';
import { linkIsOpen, openLink } from '@/lib/report/link/open-link';
import { withdrawLink } from '@/lib/report/link/withdraw-link.command';
import { makeWorld, type World } from '../access/world';
import { testDatabase } from '../support/database';
import { type SharingDesk, sharingDesk } from './sharing-desk';

const { superuser } = await testDatabase();
const admin = new Client({ connectionString: superuser });
let world: World;
let desk: SharingDesk;

beforeAll(async () => {
  await admin.connect();
  world = await makeWorld(superuser);
  desk = sharingDesk(world);
}, 120_000);
afterAll(() => admin.end());

describe('a link', () => {
  it('opens one published report in its language, and each opening is noted with its form and nothing of the visitor', async () => {
    const id = await desk.published();
    const made = await desk.done(makeLinkInput, makeLink, desk.link(id));
    expect(made.token).toMatch(/^[\w-]{32,}$/);
    expect(await linkIsOpen(made.token)).toBe(true);
    const opened = await openLink(made.token, 'page');
    await openLink(made.token, 'pdf');
    expect(opened).toMatchObject({ language: 'es', report: { id, title: 'A year', version: 1 } });
    expect(opened?.report.content).toEqual(
      (await readAs(world.people.funder, (context) => getReport(context, id)))?.content,
    );
    const [listed] = await readAs(world.people.coordinator, (context) => listLinks(context, id));
    expect(listed?.visits).toBe(2);
    expect(listed?.latest.map(({ form }) => form)).toEqual(['pdf', 'page']);
    const { rows } = await admin.query(
      `select column_name::text as name from information_schema.columns where table_name = 'report_link_visit' order by 1`,
    );
    expect(rows.map(({ name }) => name)).toEqual(['created_at', 'form', 'id', 'link_id', 'network_id']);
  });

  it('is kept as its hash alone, in its row and in the history', async () => {
    const { id, token } = await desk.done(makeLinkInput, makeLink, desk.link(await desk.published()));
    const { rows } = await admin.query('select to_jsonb(l)::text as told from report_link l where id = $1', [
      id,
    ]);
    const { rows: history } = await admin.query(
      'select to_jsonb(h)::text as told from history h where record_id = $1',
      [id],
    );
    expect(rows[0]?.told).not.toContain(token);
    expect(history.length).toBeGreaterThan(0);
    const hash: unknown = (await admin.query('select token_hash from report_link where id = $1', [id]))
      .rows[0]?.token_hash;
    for (const { told } of history) expect(told).not.toContain(hash);
  });

  it('opens nothing when it is wrong, withdrawn, expired, or its report was voided, and leaves no visit then', async () => {
    const id = await desk.published();
    const visits = async () =>
      (await admin.query('select count(*)::int as n from report_link_visit')).rows[0]?.n;
    const withdrawn = await desk.done(makeLinkInput, makeLink, desk.link(id));
    await desk.done(withdrawLinkInput, withdrawLink, { id: withdrawn.id });
    const expired = await desk.done(makeLinkInput, makeLink, desk.link(id));
    await admin.query(
      "update report_link set expires_at = created_at + interval '1 millisecond' where id = $1",
      [expired.id],
    );
    const voided = await desk.published();
    const ofVoided = await desk.done(makeLinkInput, makeLink, desk.link(voided));
    await admin.query("update report set voided_at = now(), void_reason = 'tried' where id = $1", [voided]);
    const before = await visits();
    const tokens = [withdrawn.token, expired.token, ofVoided.token, 'wrong', `${expired.token}x`, ''];
    for (const token of tokens) {
      expect(await linkIsOpen(token)).toBe(false);
      expect(await openLink(token, 'page')).toBeUndefined();
    }
    expect(await visits()).toBe(before);
  });

  it('is made for published reports only, and for a year at most', async () => {
    expect(await desk.run(makeLinkInput, makeLink, desk.link(await desk.draft()))).toMatchObject({
      kind: 'not-found',
    });
    const id = await desk.published();
    expect(await desk.run(makeLinkInput, makeLink, desk.link(id, -1))).toMatchObject({
      errors: [{ code: 'past-date' }],
    });
    expect(await desk.run(makeLinkInput, makeLink, desk.link(id, 400))).toMatchObject({
      errors: [{ code: 'too-far' }],
    });
  });
});
