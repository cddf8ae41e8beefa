import { z } from 'zod';
import { conditionLimits } from '@/lib/growing/condition-limits';
import { columnRoles, dateOrders, decimalMarks, tableDelimiters } from '@/lib/growing/condition-table-layout';
import { conditionMeasures } from '@/lib/growing/vocabulary';
import { optionalCelsiusField } from '../fields/celsius-field';
import { optionalCountField } from '../fields/count-field';
import { dateField } from '../fields/date-field';
import { idField, optionalIdField } from '../fields/id-field';
import { optionalMomentField } from '../fields/moment-field';
import { optionalPercentField } from '../fields/percent-field';
import { revisionField } from '../fields/revision-field';
import { optionalTextField, textField } from '../fields/text-field';

const place = { name: textField(80), note: optionalTextField() };

export const addPlaceInput = z.object({ id: optionalIdField, siteId: idField, ...place });

export const correctPlaceInput = z.object({
  id: idField,
  revision: revisionField,
  reason: textField(1000),
  ...place,
});

export const addConditionsInput = z.object({
  /** Of the first value, by which a repeated post is known. */
  id: optionalIdField,
  placeId: idField,
  /** Left out: now. */
  readAt: optionalMomentField,
  celsius: optionalCelsiusField(),
  humidityPercent: optionalPercentField(),
  carbonDioxidePpm: optionalCountField({ least: 0, most: conditionLimits.carbon_dioxide.most }),
});

/** A year of a reading every ten minutes of three measures. */
export const mostReadingsAtOnce = 160_000;

export const tableLayoutInput = z.object({
  delimiter: z.enum(tableDelimiters),
  decimal: z.enum(decimalMarks),
  dateOrder: z.enum(dateOrders),
  temperatureUnit: z.enum(['celsius', 'fahrenheit']),
  linesBefore: z.coerce.number().int().min(0).max(1000),
  columns: z.array(z.enum(columnRoles)).min(1).max(60),
});

/** Readings that were read from a table, checked by whoever read it; checked here again. */
export const importConditionsInput = z.object({
  id: optionalIdField,
  placeId: idField,
  layout: tableLayoutInput,
  readings: z
    .array(z.object({ at: z.date(), measure: z.enum(conditionMeasures), value: z.number() }))
    .min(1, 'nothing-to-import')
    .max(mostReadingsAtOnce, 'too-many-readings'),
});

export const placeBatchInput = z.object({
  id: optionalIdField,
  batchId: idField,
  placeId: idField,
  placedOn: dateField,
});
