import type { Actor } from '@/lib/access/actor';
import { runAs } from '@/lib/access/run-command';
import type { WriteOptions } from '@/lib/access/scoped-db';
import { noteCostInput, noteLotPriceInput } from '@/lib/records/cost/cost.input';
import { noteCost } from '@/lib/records/cost/note-cost.command';
import { noteLotPrice } from '@/lib/records/cost/note-lot-price.command';

/** Ninety minutes, 3.50 of supplies, 0.50 of fuel and no water for a batch, unless said otherwise. */
export const costBatch = (actor: Actor, about: string, changes: object = {}, options: WriteOptions = {}) =>
  runAs(
    actor,
    noteCostInput,
    noteCost,
    {
      ...{ of: 'batch', about, labourMinutes: '90', supplies: '3.50', fuel: '0.5', water: '0' },
      ...changes,
    },
    options,
  );

/** Sixty minutes, 2 of fuel and 0.10 of water for a run, unless said otherwise. */
export const costRun = (actor: Actor, about: string, changes: object = {}) =>
  runAs(actor, noteCostInput, noteCost, {
    ...{ of: 'treatment-run', about, labourMinutes: '60', supplies: '0', fuel: '2', water: '0.10' },
    ...changes,
  });

export const priceLot = (
  actor: Actor,
  of: 'substrate-lot' | 'spawn-lot',
  about: string,
  paid: string,
  mass: number,
  changes: object = {},
) => runAs(actor, noteLotPriceInput, noteLotPrice, { of, about, paid, mass, ...changes });
