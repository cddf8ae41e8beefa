import type { Question } from '@/lib/base/result';

/** What a finding needs and its row does not say, with what it would stand as. */
export type UnsaidFacts = {
  /** YYYY-MM-DD, the day of the harvest of the same line. */
  readonly foundOn?: string | undefined;
  readonly sign?: 'other' | undefined;
  readonly stage?: 'colonising' | 'cropping' | undefined;
  readonly action?: 'left_in_place' | undefined;
};

/** What is asked before it stands like that: nobody wrote it. */
export function askUnsaid({ foundOn, sign, stage, action }: UnsaidFacts): readonly Question[] {
  return [
    ...(foundOn === undefined
      ? []
      : [{ field: 'foundOn', code: 'intake-found-when-weighed', values: { date: foundOn } }]),
    ...(sign === undefined ? [] : [{ field: 'sign', code: 'intake-no-sign' }]),
    ...(stage === undefined ? [] : [{ field: 'stage', code: `intake-stage-${stage}` }]),
    ...(action === undefined ? [] : [{ field: 'action', code: 'intake-left-in-place' }]),
  ];
}

const words = {
  en: {
    sentence: (list: string) =>
      `The table did not say, and it was taken to be so when it was brought in: ${list}.`,
    foundOn: 'the day found (that of the harvest)',
    sign: 'the sign',
    stage: 'the stage',
    action: 'what was done',
  },
  es: {
    sentence: (list: string) => `La tabla no lo decía y se supuso al traerla: ${list}.`,
    foundOn: 'el día del hallazgo (el de la cosecha)',
    sign: 'la señal',
    stage: 'la etapa',
    action: 'lo que se hizo',
  },
} as const;

/** What stays with a finding of which something was taken to be so, in the language of whoever brought it; undefined of any other. */
export function assumedNote(facts: UnsaidFacts, language: string): string | undefined {
  const of = words[language === 'es' ? 'es' : 'en'];
  const names = (['foundOn', 'sign', 'stage', 'action'] as const).filter((name) => facts[name] !== undefined);
  return names.length === 0 ? undefined : of.sentence(names.map((name) => of[name]).join(', '));
}
