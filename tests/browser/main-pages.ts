import { aurelia, ives, rocio, wren } from './people';

const everybodys = [
  '/today',
  '/quick/harvest',
  '/quick/contamination',
  '/quick/check',
  '/batches',
  '/batches/new',
  '/batches/new?repeat=last',
  '/weighings',
  '/weighings/new',
  '/programme',
  '/programme/trainings',
  '/programme/trainings/new',
  '/programme/participants',
  '/treatments',
  '/trials',
  '/treatments/new?methodKind=cold_lime_soak&water=50&water__unit=L',
  '/sums?what=lime&water=50&water__unit=L',
  '/sums?what=bed&bedArea=4&bedArea__unit=m2',
  '/questions/records',
  '/import',
];
const coordinators = [
  '/trials/new',
  '/comparison',
  '/comparison/rows',
  '/people',
  '/people/invite',
  '/settings',
  '/settings/suitability',
  '/settings/export',
  '/settings/suitability/new',
  '/questions/costs',
  '/questions/treatments',
  '/questions/losses',
  '/programme/sales',
  '/programme/practices',
  '/settings/money',
  '/reports/new',
  '/sites/new',
  '/questions/watch',
  '/account/digest',
];

/** The main pages by who reads them and in which language; a new page is added here. */
export const readers = [
  {
    language: 'en',
    email: ives,
    pages: [
      ...everybodys,
      '/treatments/new',
      '/substrate-lots',
      '/spawn-lots',
      '/sites',
      '/reports',
      '/account',
    ],
  },
  {
    language: 'es',
    email: rocio,
    pages: [...everybodys, '/substrate-lots', '/spawn-lots', '/reports', '/account'],
  },
  { language: 'en', email: wren, pages: coordinators },
  { language: 'es', email: aurelia, pages: coordinators },
] as const;
