import type { RecordTableKind } from '@/lib/growing/record-table-layout';
import type { TableField } from '../table-field';
import { batchFields } from './batch-fields';
import { findingFields } from './finding-fields';
import { harvestFields } from './harvest-fields';
import { spawnLotFields, substrateLotFields } from './lot-fields';
import { notebookFields } from './notebook-fields';
import { peopleFields } from './people-fields';
import { siteFields } from './site-fields';
import { treatmentFields } from './treatment-fields';

/** What the columns of each kind of table can hold, in the order in which a form offers it. */
export const fieldsOfKind: Readonly<Record<RecordTableKind, readonly TableField[]>> = {
  harvests: harvestFields,
  batches: batchFields,
  treatments: treatmentFields,
  notebook: notebookFields,
  findings: findingFields,
  spawn_lots: spawnLotFields,
  substrate_lots: substrateLotFields,
  sites: siteFields,
  people: peopleFields,
};
