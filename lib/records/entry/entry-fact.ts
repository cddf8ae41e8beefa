import type {
  CheckKind,
  ContaminationSign,
  CropStage,
  FindingAction,
  LossCause,
  TrimState,
} from '@/lib/database/generated/enums';

/** A value that can be compared and then written in anybody's language and units. */
export type FactValue =
  | { readonly kind: 'date'; readonly date: string }
  | { readonly kind: 'mass'; readonly grams: number }
  | { readonly kind: 'count'; readonly count: number }
  | { readonly kind: 'text'; readonly text: string }
  | { readonly kind: 'word'; readonly group: 'trimState'; readonly word: TrimState }
  | { readonly kind: 'word'; readonly group: 'contaminationSign'; readonly word: ContaminationSign }
  | { readonly kind: 'word'; readonly group: 'cropStage'; readonly word: CropStage }
  | { readonly kind: 'word'; readonly group: 'findingAction'; readonly word: FindingAction }
  | { readonly kind: 'word'; readonly group: 'lossCause'; readonly word: LossCause }
  | { readonly kind: 'word'; readonly group: 'checkKind'; readonly word: CheckKind };

/** What a record says, by the names of its form's fields; null: said nothing. */
export type Facts = ReadonlyMap<string, FactValue | null>;

export const dateFact = (date: string): FactValue => ({ kind: 'date', date });
export const countFact = (count: number | null): FactValue | null =>
  count === null ? null : { kind: 'count', count };
export const massFact = (grams: number | null): FactValue | null =>
  grams === null || grams === 0 ? null : { kind: 'mass', grams };
export const textFact = (text: string | null): FactValue | null =>
  text === null || text === '' ? null : { kind: 'text', text };

/** Unit numbers in order, since "3, 1" and "1, 3" name the same units. */
export const unitNumbersFact = (numbers: readonly number[]): FactValue | null =>
  textFact([...numbers].sort((a, b) => a - b).join(', '));
