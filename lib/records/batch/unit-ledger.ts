import type { FindingAction } from '@/lib/database/generated/enums';
import { leavesUnitStanding } from '@/lib/growing/live-units';
import { lastActions } from '../finding/last-actions';

type Step = { readonly units: number; readonly action: FindingAction };

/** What the records say about a batch's units; voided records left out, follow-ups in order of time. */
export type UnitRecords = {
  readonly inoculated: number;
  readonly findings: readonly (Step & { readonly followUps: readonly Step[] })[];
  readonly losses: readonly { readonly units: number; readonly contaminatedUnits: number }[];
  /** Units that went on to second lives. */
  readonly moved: number;
};

export type UnitLedger = {
  readonly inoculated: number;
  /** Ever found contaminated, each counted once. */
  readonly contaminated: number;
  readonly lost: number;
  readonly moved: number;
  /** Units that can still be found contaminated: neither found before nor lost clean. */
  readonly canBeFound: number;
  /** Contaminated units still standing, which can be lost otherwise. */
  readonly contaminatedStanding: number;
  /** Units still standing: neither discarded, buried, lost nor moved on; never below 0. */
  readonly live: number;
};

function sum(numbers: readonly number[]): number {
  return numbers.reduce((total, number) => total + number, 0);
}

/** Counts a batch's units; a unit contaminated and then lost stays contaminated and is gone once. */
export function unitLedger({ inoculated, findings, losses, moved }: UnitRecords): UnitLedger {
  const contaminated = sum(findings.map(({ units }) => units));
  const gone = sum(
    findings
      .flatMap((finding) => lastActions(finding, finding.followUps))
      .filter(({ action }) => !leavesUnitStanding(action))
      .map(({ units }) => units),
  );
  const lost = sum(losses.map(({ units }) => units));
  const lostContaminated = sum(losses.map(({ contaminatedUnits }) => contaminatedUnits));
  return {
    inoculated,
    contaminated,
    lost,
    moved,
    canBeFound: Math.max(0, inoculated - contaminated - (lost - lostContaminated)),
    contaminatedStanding: Math.max(0, contaminated - gone - lostContaminated),
    live: Math.max(0, inoculated - gone - lost - moved),
  };
}
