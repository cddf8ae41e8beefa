export const trialStates = ['draft', 'running', 'ended', 'published'] as const;
export type TrialState = (typeof trialStates)[number];

export function trialStateOf(trial: {
  readonly startedAt: Date | null;
  readonly endedAt: Date | null;
  readonly result: { readonly id: string } | null;
}): TrialState {
  if (trial.result !== null) return 'published';
  if (trial.endedAt !== null) return 'ended';
  return trial.startedAt === null ? 'draft' : 'running';
}
