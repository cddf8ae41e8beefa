import 'server-only';
import type { WriteContext } from '@/lib/access/context';
import { parseInput } from '@/lib/access/parse-input';
import { invalid, ok, type Result } from '@/lib/base/result';
import { insertStarted } from '@/lib/records/batch/insert-started';
import { judgeStarts } from '@/lib/records/batch/judge-starts';
import { startBatchInput } from '@/lib/records/batch/start-batch.input';
import { insertFindings } from '@/lib/records/finding/insert-findings';
import { insertWeighings } from '@/lib/records/weighing/insert-weighings';
import { KnownKeys } from '../known-keys';
import { codeForm } from '../plain-words';
import { takeApart } from '../take-apart';
import { problemsOf, type RowToTake, type TakenRow, type Taker, type TakeSettings } from '../taker';
import { judgeLine, type NotebookLine, type NotebookPlan } from './judge-notebook';
import { type NotebookCodes, notebookCodes } from './notebook-codes';
import { readFacts } from './notebook-facts';
import { halfSaid, lineHarvests, rawBatchOf, saysFinding } from './notebook-line';
import { findingKeys } from './take-findings';
import { harvestKeys } from './take-harvests';
import { filledByUnits, type UnitMasses, unitMasses } from './unit-masses';

type Coded = { readonly at: number; readonly row: RowToTake; readonly code: string };

/** What no other row has a say in. */
function refused({ values, errors }: RowToTake): TakenRow | undefined {
  if (errors.length > 0) return { kind: 'needs', problems: errors };
  if (!values.has('code')) return { kind: 'needs', problems: problemsOf(invalid('code', 'missing')) };
  const half = halfSaid(values);
  return half.length > 0 ? { kind: 'needs', problems: half } : undefined;
}

async function write(context: WriteContext, plan: NotebookPlan): Promise<Result<null>> {
  for (const started of await insertStarted(context, plan.starts)) if (started.kind !== 'ok') return started;
  await insertWeighings(context, plan.weighings);
  await insertFindings(context, plan.findings);
  return ok(null);
}

/**
 * Takes lines that hold what several tables do: each starts its batch where there is none, then adds what it says. A
 * group of lines is judged in order, each by what those before it left, and then written table by table.
 */
export function takeNotebook(settings: TakeSettings): Taker {
  const { siteId, region, rowsByText, usedUp } = settings;
  const [harvests, findings] = [new KnownKeys(usedUp), new KnownKeys(usedUp)];
  /** Batches that lines named or started, by the form of the code. */
  const batches = new Map<string, string>();
  let codes: Promise<NotebookCodes> | undefined;
  let masses: Promise<UnitMasses> | undefined;

  async function takeGroup(context: WriteContext, rows: readonly Coded[]): Promise<Result<TakenRow[]>> {
    codes ??= notebookCodes(context, rowsByText);
    const known = await codes;
    masses ??= unitMasses(settings);
    const ofUnits = await masses;
    const before = (code: string) => batches.get(codeForm(code)) ?? known.find(code);
    const lines = rows.map(({ row, code }): NotebookLine => {
      const count = known.lines(code);
      if (before(code) !== undefined) return { row, code, lines: count, start: undefined };
      const said = parseInput(startBatchInput, rawBatchOf(row.values, siteId, count), region);
      const start = said.kind === 'ok' ? filledByUnits(said.value, row, ofUnits, region) : said;
      return { row, code, lines: count, start };
    });
    const idsOf = (some: (row: RowToTake) => boolean) => [
      ...new Set(rows.flatMap(({ row, code }) => (some(row) ? (before(code) ?? []) : []))),
    ];
    const harvested = idsOf(({ values }) => lineHarvests(values).length > 0);
    const found = idsOf(({ values }) => saysFinding(values));
    const facts = await readFacts(context, { all: idsOf(() => true), harvested, found });
    await harvests.load(harvested, (ids) => harvestKeys(context, ids));
    await findings.load(found, (ids) => findingKeys(context, ids));
    const judgeStart = await judgeStarts(
      context,
      lines.flatMap(({ start }) => (start?.kind === 'ok' ? [start.value] : [])),
    );
    const plan: NotebookPlan = { starts: [], weighings: [], findings: [], giveBack: [] };
    const named = new Map<string, string>();
    const answers = lines.map((line) => {
      const find = (code: string) => named.get(codeForm(code)) ?? before(code);
      const { language } = context.actor;
      const means = {
        now: context.now,
        region,
        language,
        siteId,
        facts,
        harvests,
        findings,
        find,
        judgeStart,
      };
      const answer = judgeLine(line, means, plan);
      const [id] = answer.kind === 'needs' ? [] : answer.recordIds;
      if (id !== undefined) named.set(codeForm(line.code), id);
      return answer;
    });
    let written: Result<null> | undefined;
    try {
      written = await write(context, plan);
    } finally {
      if (written?.kind !== 'ok') for (const giveBack of plan.giveBack.reverse()) giveBack();
    }
    if (written.kind !== 'ok') return written;
    for (const [form, id] of named) batches.set(form, id);
    // What the table itself adds was not there before.
    const started = plan.starts.map((one) => one.named.id);
    for (const keys of [harvests, findings]) await keys.load(started, async () => []);
    return ok(answers);
  }

  return {
    atOnce: 500,
    take: async (context, rows) => {
      const answers: TakenRow[] = [];
      const coded = rows.flatMap((row, at): Coded[] => {
        const answer = refused(row);
        if (answer) answers[at] = answer;
        return answer ? [] : [{ at, row, code: String(row.values.get('code')) }];
      });
      const taken = await takeApart(
        context,
        coded,
        (some) => takeGroup(context, some),
        (failure): TakenRow => ({ kind: 'needs', problems: problemsOf(failure) }),
      );
      for (const [index, { at }] of coded.entries()) {
        const answer = taken[index];
        if (answer) answers[at] = answer;
      }
      return answers;
    },
  };
}
