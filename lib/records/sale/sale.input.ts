import { z } from 'zod';
import { outletKinds } from '@/lib/growing/programme-vocabulary';
import { choiceField } from '../fields/choice-field';
import { optionalCountField } from '../fields/count-field';
import { dateField } from '../fields/date-field';
import { idField, optionalIdField } from '../fields/id-field';
import { massField } from '../fields/mass-field';
import { moneyField } from '../fields/money-field';
import { revisionField } from '../fields/revision-field';
import { optionalTextField, textField } from '../fields/text-field';

const sale = {
  soldOn: dateField,
  outlet: choiceField(outletKinds),
  mass: massField(),
  /** In main units of the network's currency. */
  amount: moneyField(),
  customers: optionalCountField(),
  note: optionalTextField(),
};

export const recordSaleInput = z.object({ id: optionalIdField, siteId: idField, ...sale });

export const correctSaleInput = z.object({
  id: idField,
  revision: revisionField,
  reason: textField(1000),
  ...sale,
});
