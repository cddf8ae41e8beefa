import type {
  CheckKind,
  CloseReason,
  ContaminationSign,
  CropStage,
  FindingAction,
  LossCause,
  NoHarvest,
  SpentDestination,
} from '@/lib/database/generated/enums';
import { asCalendarDate } from '../fields/stored-date';
import type { BatchRow } from './batch-include';

/** An entry of one's own kind that can be corrected and voided. */
type Entry = {
  readonly id: string;
  readonly revision: number;
  readonly on: string;
  readonly byId: string | null;
  readonly note: string | null;
  /** Why it was taken back; null while it counts. */
  readonly voidReason: string | null;
};

export type FollowUpView = Entry & { readonly action: FindingAction; readonly units: number };

export type StoryEntry =
  | (Entry & { readonly kind: 'inoculated'; readonly units: number })
  | (Entry & { readonly kind: 'look' })
  | (Entry & {
      readonly kind: 'finding';
      readonly units: number;
      readonly sign: ContaminationSign;
      readonly stage: CropStage;
      readonly action: FindingAction;
      readonly unitNumbers: readonly number[];
      readonly followUps: readonly FollowUpView[];
    })
  | (Entry & {
      readonly kind: 'loss';
      readonly units: number;
      readonly contaminatedUnits: number;
      readonly cause: LossCause;
      readonly unitNumbers: readonly number[];
    })
  | (Entry & { readonly kind: 'check'; readonly what: CheckKind })
  | (Entry & {
      readonly kind: 'weighing';
      readonly grams: number;
      readonly flush: number;
      readonly shared: boolean;
      /** Soaked or shocked into fruiting, or not; null when nobody said. */
      readonly forced: boolean | null;
    })
  | (Entry & {
      readonly kind: 'closed';
      readonly why: CloseReason | null;
      readonly spent: SpentDestination | null;
      readonly noHarvest: NoHarvest | null;
    });

type Row = {
  id: string;
  revision: number;
  createdById: string | null;
  note?: string | null;
  voidedAt: Date | null;
  voidReason: string | null;
};

function entry(row: Row, on: Date): Entry {
  return {
    id: row.id,
    revision: row.revision,
    on: asCalendarDate(on),
    byId: row.createdById,
    note: row.note ?? null,
    voidReason: row.voidedAt === null ? null : (row.voidReason ?? ''),
  };
}

const numbers = (rows: readonly { unitNumber: number }[]) => rows.map(({ unitNumber }) => unitNumber);

/** The order of what happened on one day: a batch begins before and closes after everything else. */
function place({ kind }: StoryEntry): number {
  if (kind === 'inoculated') return 0;
  return kind === 'closed' ? 2 : 1;
}

/** Everything that happened to a batch, in the order of its days. */
export function batchStory(row: BatchRow): StoryEntry[] {
  const own = { ...row, note: null, voidedAt: null };
  const story: StoryEntry[] = [
    { kind: 'inoculated', ...entry(own, row.inoculatedOn), byId: row.startedById, units: row.unitCount },
    ...row.looks.map((look): StoryEntry => ({ kind: 'look', ...entry(look, look.lookedOn) })),
    ...row.checks.map(
      (check): StoryEntry => ({
        kind: 'check',
        ...entry(check, check.checkedOn),
        what: check.kind,
      }),
    ),
    ...row.findings.map(
      (finding): StoryEntry => ({
        kind: 'finding',
        ...entry(finding, finding.foundOn),
        units: finding.units,
        sign: finding.sign,
        stage: finding.stage,
        action: finding.action,
        unitNumbers: numbers(finding.namedUnits),
        followUps: finding.followUps.map((followUp) => ({
          ...entry(followUp, followUp.doneOn),
          action: followUp.action,
          units: followUp.units,
        })),
      }),
    ),
    ...row.losses.map(
      (loss): StoryEntry => ({
        kind: 'loss',
        ...entry(loss, loss.lostOn),
        units: loss.units,
        contaminatedUnits: loss.contaminatedUnits,
        cause: loss.cause,
        unitNumbers: numbers(loss.namedUnits),
      }),
    ),
    ...row.weighingLines.map(
      (line): StoryEntry => ({
        kind: 'weighing',
        ...entry(line.weighing, line.weighing.weighedOn),
        grams: line.freshGrams,
        flush: line.flush,
        shared: line.sharedWeighing,
        forced: line.forcedFlush,
      }),
    ),
  ];
  if (row.closedOn !== null)
    story.push({
      kind: 'closed',
      ...entry(own, row.closedOn),
      byId: null,
      why: row.closeReason,
      spent: row.spentDestination,
      noHarvest: row.noHarvest,
    });
  return story.sort(
    (one, other) =>
      one.on.localeCompare(other.on) || place(one) - place(other) || one.id.localeCompare(other.id),
  );
}
