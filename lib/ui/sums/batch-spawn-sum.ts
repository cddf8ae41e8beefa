import { deriveBatch } from '@/lib/growing/derive-batch';
import { spawnNeeded, spawnPercentOfWet } from '@/lib/growing/spawn-rate';
import { type BatchEntries, batchEntries } from './batch-entries';
import { usualSpawnPercent } from './spawn-sum';
import { sumFormat } from './sum-format';
import { fillWords, type SumAnswer, type SumInput, type SumLine } from './sum-input';

/** Wet mass to be spawned, grams: as filled, else what the dry mass weighs at the usual moisture after treatment. */
function wetGramsOf({ facts, components }: BatchEntries): number | null {
  const { wetGrams, dryGrams } = deriveBatch(facts);
  if (wetGrams !== null) return wetGrams;
  const drained = components.find(({ role }) => role === 'substrate')?.drainedPercent ?? null;
  return dryGrams === null || drained === null ? null : dryGrams / (1 - drained / 100);
}

/** Spawn for the batch at the wanted rate, the rate that the mass typed makes, and what the site has left of the lot. */
export function batchSpawnSum(input: SumInput): SumAnswer {
  const batch = batchEntries(input);
  const { words, reader, facts } = input;
  if (batch === undefined || facts === null) return { lines: [] };
  const write = sumFormat(reader);
  const lines: SumLine[] = [];
  const wet = batch.facts.containerKind === 'log' ? null : wetGramsOf(batch);
  const typedRate = batch.entries.percent('plan.spawnPercent');
  const typed = batch.shares.reduce<number | null>(
    (sum, { grams }) => (grams === null ? sum : (sum ?? 0) + grams),
    null,
  );
  const needed = wet === null ? null : spawnNeeded(1, wet, typedRate ?? usualSpawnPercent);
  const wantedGrams = needed?.kind === 'value' ? needed.value.spawnGrams : null;
  if (wet !== null && wantedGrams !== null && batch.facts.containerKind !== 'bed')
    lines.push({
      key: 'spawnNeeded',
      text: fillWords(words.spawnNeeded, {
        mass: write.mass(wantedGrams),
        wet: write.mass(wet),
        percent: write.percent(typedRate ?? usualSpawnPercent),
      }),
    });
  const rate = wet === null ? null : spawnPercentOfWet(typed, wet);
  if (rate?.kind === 'value')
    lines.push({
      key: 'spawnRate',
      text: fillWords(words.spawnRate, { percent: write.percent(rate.value) }),
    });
  const siteId = batch.entries.text('siteId');
  for (const { lotId, grams } of batch.shares) {
    const code = facts.spawnLots.find(({ id }) => id === lotId)?.code ?? '';
    const left = facts.spawnLeft.find((one) => one.lotId === lotId && one.siteId === siteId);
    if (code === '' || siteId === '') continue;
    if (left === undefined) {
      lines.push({ key: `left ${lotId}`, text: fillWords(words.leftUnknown, { lot: code }) });
      continue;
    }
    const wanted = grams ?? (batch.shares.length === 1 ? wantedGrams : null);
    const short = wanted === null ? 0 : wanted - left.grams;
    const values = {
      lot: code,
      left: write.mass(Math.max(0, left.grams)),
      mass: write.mass(short),
      count: left.unweighed,
    };
    lines.push({ key: `left ${lotId}`, text: fillWords(words.leftHere, values) });
    if (left.unweighed > 0)
      lines.push({ key: `unweighed ${lotId}`, text: fillWords(words.leftUnweighed, values) });
    if (short > 0)
      lines.push({ key: `short ${lotId}`, text: fillWords(words.leftShort, values), tone: 'watch' });
  }
  return { lines };
}
