import type { DocumentCell, DocumentRow, ReportDocument } from '@/lib/report/document/report-document';

const methods = [
  'Hot-water bath',
  'Cold lime soak',
  'Cold-water fermentation',
  'Steam in a drum',
  'Untreated',
];

function figure(estimate: number, unit: string, batches: number): DocumentCell {
  const [low, high] = [estimate * 0.61, estimate * 1.43];
  return {
    text: `${estimate.toFixed(1)}\u00a0${unit} (${low.toFixed(1)}–${high.toFixed(1)})`,
    value: estimate,
    unit,
    interval: { low, high },
    below: `${batches} batches, ${batches * 20} units`,
    history: [
      `Based on ${batches * 2} of ${batches * 20}`,
      'Left out: 3 batches: nobody looked after the end of their window',
      'Wilson interval, widened for batches that fall together. Batches of one site count together.',
      'Data as of 26 Nov 2026',
    ],
  };
}

const methodRows = (containers: number): DocumentRow[] =>
  Array.from({ length: containers }, (_, at) => at).flatMap((at) =>
    methods.map((method, index) => ({
      key: `${at}-${index}`,
      group: `Container ${at + 1}`,
      cells: [
        { text: method },
        figure(3 + at * 0.31 + index * 1.7, '%', 4 + at + index),
        index === 3 ? { text: 'protected' } : figure(41.3 + at * 1.9 + index, '%', 3 + at + index),
      ],
    })),
  );

/** A report of about `containers` half pages with everything that a report can hold. */
export const sampleDocument = (containers = 3): ReportDocument => ({
  title: 'Larkmoor Growers: the last year',
  lead: 'Larkmoor Growers’ Network, 1 Dec 2025 to 30 Nov 2026.',
  language: 'en',
  wordsLabel: 'In the coordination’s own words',
  protectedWord: 'protected',
  standing: 'Version 2, published 3 Dec 2026, 10:15',
  colophon: ['Built from the records as of 3 Dec 2026, 09:00.'],
  sections: [
    {
      key: 'glance',
      heading: 'At a glance',
      words: 'Everybody soaked in lime this year 🍄, at 60\u202f°C or colder.\n\n=2+3 is no formula here.',
      paragraphs: [],
      facts: [
        { key: 'sites', label: 'Sites active', text: '14', value: 14 },
        { key: 'people', label: 'People recording, each counted once', text: 'protected' },
        { key: 'batches', label: 'Batches started', text: '1,204', value: 1204 },
        { key: 'sold', label: 'Mass sold', text: '475.3 kg', value: 475.3 },
      ],
    },
    {
      key: 'harvest',
      heading: 'What was harvested, and where it went',
      paragraphs: ['Fresh mass by the day it was weighed.'],
      tables: [
        {
          key: 'harvest',
          caption: 'Fresh mass by destination',
          columns: [
            { key: 'kind', header: 'Kind', numeric: false },
            { key: 'mass', header: 'Mass', numeric: true, unit: 'kg' },
          ],
          rows: [
            { key: 'sold', cells: [{ text: 'Sold' }, { text: '212.4\u00a0kg', value: 212.412 }] },
            { key: 'given_away', cells: [{ text: '-Given away' }, { text: 'protected' }] },
            {
              key: 'eaten',
              cells: [{ text: 'Eaten' }, { text: '88.0\u00a0kg', value: 88, below: '(partly assumed)' }],
            },
            {
              key: 'total',
              total: true,
              cells: [{ text: 'Total' }, { text: '412.4\u00a0kg', value: 412.39 }],
            },
          ],
        },
      ],
    },
    {
      key: 'methods',
      heading: 'How the methods did',
      paragraphs: ['In brackets stands the 95 % interval.'],
      tables: [
        {
          key: 'methods',
          caption: 'Contamination and yield by method',
          columns: [
            { key: 'method', header: 'Method', numeric: false },
            { key: 'contamination', header: 'Contaminated units', numeric: true },
            { key: 'yield', header: 'Yield', numeric: true },
          ],
          rows: methodRows(containers),
        },
      ],
    },
    {
      key: 'stories',
      heading: 'Stories',
      paragraphs: ['Told with the consent of those in them.'],
      stories: [
        {
          id: 'straw',
          title: 'Straw that was burnt',
          words: 'It comes to the shed now.',
          picture: { alt: 'Straw in nets', widthPx: 64, heightPx: 48 },
        },
        {
          id: 'gone',
          title: 'A second story',
          words: '',
          picture: undefined,
          withdrawal: 'Its picture was taken out on 1 Dec 2026.',
        },
      ],
    },
  ],
});
