import type { Page } from '@playwright/test';
import { below, type FormPage, openBatch } from './find-address';
import { ives, wren } from './people';

const programmeLists = ['trainings', 'participants', 'sales', 'practices'] as const;
const costAddresses = [
  ['batch', openBatch],
  ['spawn-lot', '/spawn-lots'],
] as const;

/** Forms of the programme and of costs. */
export const programmeForms: readonly FormPage[] = [
  ...programmeLists.flatMap((list) => [
    { route: `/programme/${list}/new`, as: ives },
    {
      route: `/programme/${list}/[id]/correct`,
      as: wren,
      find: below(`/programme/${list}`, '/correct'),
    },
  ]),
  {
    route: '/programme/participants/[id]/erase',
    as: wren,
    find: below('/programme/participants', '/erase'),
    keeps: false,
  },
  { route: '/settings/money', as: wren, keeps: false },
  ...costAddresses.map(([of, list]) => ({
    route: '/costs/[of]/[id]',
    name: `what a ${of} cost`,
    as: wren,
    find: async (page: Page) => `/costs/${of}/${(await below(list)(page)).split('/').at(-1)}`,
    ...(of === 'batch' ? {} : { keeps: false as const }),
  })),
];
