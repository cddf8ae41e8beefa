/** One cell: as it is read, and as a number for a spreadsheet where it is one. */
export type DocumentCell = {
  readonly text: string;
  /** Unrounded, in the column's unit. */
  readonly value?: number;
  /** The interval of `value`, in its unit. */
  readonly interval?: { readonly low: number; readonly high: number };
  /** Unit of `value` as written, where the rows of a column differ in it. */
  readonly unit?: string;
  /** A quieter second line, for instance how much lies behind a figure. */
  readonly below?: string;
  /** How the figure was worked out, line by line. */
  readonly history?: readonly string[];
};

export type DocumentColumn = {
  readonly key: string;
  readonly header: string;
  readonly numeric: boolean;
  /** Unit of `value`, UCUM; '1' for counts. */
  readonly unit?: string;
};

export type DocumentRow = {
  readonly key: string;
  readonly cells: readonly DocumentCell[];
  readonly total?: boolean;
  /** Heading above the first row of each group. */
  readonly group?: string;
};

export type DocumentTable = {
  readonly key: string;
  readonly caption: string;
  readonly columns: readonly DocumentColumn[];
  readonly rows: readonly DocumentRow[];
};

export type DocumentFact = {
  readonly key: string;
  readonly label: string;
  readonly text: string;
  readonly value?: number;
};

export type DocumentStory = {
  readonly id: string;
  readonly title: string;
  readonly words: string;
  readonly picture: { readonly alt: string; readonly widthPx: number; readonly heightPx: number } | undefined;
  /** Says that a consent was withdrawn and what left the report because of it. */
  readonly withdrawal?: string;
};

export type DocumentSection = {
  readonly key: string;
  readonly heading: string;
  /** The coordinator's own words; they stand before the figures, headed by `wordsLabel`. */
  readonly words?: string;
  readonly paragraphs: readonly string[];
  readonly facts?: readonly DocumentFact[];
  readonly tables?: readonly DocumentTable[];
  readonly stories?: readonly DocumentStory[];
  /** Quieter lines below the tables. */
  readonly notes?: readonly string[];
};

/**
 * A report in one language, word by word: the page, the PDF, the workbook and the comparison of versions all draw this
 * and nothing else, so that no two of them can disagree.
 */
export type ReportDocument = {
  readonly title: string;
  readonly lead: string;
  readonly language: 'en' | 'es';
  /** Heads the coordinator's own words, so that nobody takes a number in them for a figure of the report. */
  readonly wordsLabel: string;
  /** What stands in the place of a figure that would tell about few sites. */
  readonly protectedWord: string;
  /** "Version 2, published on 3 Dec 2026" or that it is a draft. */
  readonly standing: string;
  /** Small lines of the end: as of when, where from. */
  readonly colophon: readonly string[];
  readonly sections: readonly DocumentSection[];
};
