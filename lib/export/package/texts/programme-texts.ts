import { amount, day, none, notRecorded, type TableTexts, text } from './column-text';

/** Costs, sales and what a programme does. */
export const programmeTexts: TableTexts = {
  lot_price: {
    substrate_lot_id: text('substrate lot', 'the price is of a spawn lot'),
    spawn_lot_id: text('spawn lot', 'the price is of a substrate lot'),
    paid_minor: text('what was paid, in the smallest unit of the currency'),
    for_grams: amount('gram', 'mass that it was paid for'),
  },
  cost_note: {
    batch_id: text('batch', 'the costs are of a run'),
    treatment_run_id: text('treatment run', 'the costs are of a batch'),
    labour_minutes: amount('minute', 'labour', notRecorded),
    supplies_minor: text('supplies, in the smallest unit of the currency', notRecorded),
    fuel_minor: text('fuel, in the smallest unit of the currency', notRecorded),
    water_minor: text('water, in the smallest unit of the currency', notRecorded),
  },
  sale: {
    sold_on: text(`${day} of the sale`),
    outlet: text('kind of outlet'),
    grams: amount('gram', 'fresh mushrooms sold'),
    amount_minor: text('what was paid, in the smallest unit of the currency'),
    customers: amount('one', 'customers', notRecorded),
  },
  participant: {
    counted_on: text('day on which the person agreed to be counted', 'the person has not agreed'),
    named_on: text('day on which the person agreed to be named', 'the person has not agreed'),
    pictured_on: text('day on which the person agreed to be pictured', 'the person has not agreed'),
    erased_at: text('when the name was erased, UTC', 'it was not erased'),
  },
  training: {
    held_on: text(`${day} on which it was held`),
    title: text('title'),
    topic: text('topic'),
    place: text('where it was held', notRecorded),
    minutes: amount('minute', 'how long it took', notRecorded),
    head_count: amount(
      'one',
      'people present, where they were counted and not listed',
      'they were listed, or not counted',
    ),
  },
  training_question: {
    training_id: text('training at which it was asked'),
    wording: text('the question'),
    scale_most: amount('one', 'highest answer; the lowest is 1'),
    least_label: text('what the lowest answer means', none),
    most_label: text('what the highest answer means', none),
    before_counts: text('how many gave each answer before, from the lowest (JSON)'),
    after_counts: text('how many gave each answer after, from the lowest (JSON)'),
  },
  training_attendance: { training_id: text('training'), participant_id: text('participant') },
  adopted_practice: {
    practice: text('kind of practice'),
    description: text('the practice in words', none),
    since: text('day from which it is followed'),
    until: text('day until which it was followed', 'it still is'),
    growers: amount('one', 'growers who follow it', notRecorded),
  },
};
