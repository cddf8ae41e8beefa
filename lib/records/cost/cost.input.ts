import { z } from 'zod';
import { choiceField } from '../fields/choice-field';
import { optionalCountField } from '../fields/count-field';
import { idField, optionalIdField } from '../fields/id-field';
import { massField } from '../fields/mass-field';
import { moneyField, optionalMoneyField } from '../fields/money-field';
import { revisionField } from '../fields/revision-field';
import { optionalTextField } from '../fields/text-field';

/** What costs are written down about, as addresses name it. */
export const costSubjects = ['batch', 'treatment-run'] as const;
export const pricedLots = ['substrate-lot', 'spawn-lot'] as const;
export type CostSubject = (typeof costSubjects)[number];
export type PricedLot = (typeof pricedLots)[number];

/** `revision` of what stands already; left out when nothing does. */
const standing = {
  id: optionalIdField,
  about: idField,
  revision: z
    .union([z.literal('').transform(() => null), revisionField, z.null()])
    .optional()
    .default(null),
  /** Asked only for a change. */
  reason: optionalTextField(1000),
};

const oneYearMinutes = 525_600;

export const noteCostInput = z.object({
  ...standing,
  of: choiceField(costSubjects),
  labourMinutes: optionalCountField({ least: 0, most: oneYearMinutes }),
  supplies: optionalMoneyField(),
  fuel: optionalMoneyField(),
  water: optionalMoneyField(),
  note: optionalTextField(),
});

export const noteLotPriceInput = z.object({
  ...standing,
  of: choiceField(pricedLots),
  paid: moneyField(),
  mass: massField(),
});
