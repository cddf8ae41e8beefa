const keys = [
  'problemTitle',
  'errorPrefix',
  'optional',
  'confirmTitle',
  'confirmIntro',
  'confirmBox',
  'saving',
  'chooseOne',
  'unit',
  'day',
  'month',
  'year',
  'time',
  'dateExample',
  'timeExample',
  'product',
  'understood',
  'twoReadings',
  'notUnderstood',
  'conflictTitle',
  'conflictIntro',
  'conflictField',
  'conflictTheirs',
  'conflictYours',
  'conflictSame',
  'keepTheirs',
  'useMine',
  'noSignal',
] as const;
type Key = (typeof keys)[number];

/** The words a form needs of its own, translated on the server so that no catalogue travels to the phone. */
export type FormWords = Readonly<Record<Key, string>> & {
  /** BCP 47 tag for the figures that a form echoes and reads. */
  readonly locale: string;
};

/** Takes a form's words out of the catalogue's common area, with the places of sentences still open. */
export function formWordsOf(common: Readonly<Record<Key, string>>, locale: string): FormWords {
  const words = keys.map((key) => [key, common[key]] as const);
  return { ...(Object.fromEntries(words) as Record<Key, string>), locale };
}
