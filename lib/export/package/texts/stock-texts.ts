import { amount, day, none, notApplicable, notRecorded, notYet, type TableTexts, text } from './column-text';

/** The network, its sites, what it grows with, and treatments. */
export const stockTexts: TableTexts = {
  network: {
    region: text('region by which numbers and dates are written, a BCP 47 tag'),
    cell_min_sites: amount('one', 'fewest sites that a figure of a report for funders may rest on'),
    cell_top_two_percent: amount(
      'percent',
      'largest part of a reported figure that its two largest sites may have',
    ),
    currency: text('currency of prices and costs, ISO 4217', 'none is chosen'),
    labour_minor_per_hour: amount(
      'one',
      'value of an hour of labour, in the smallest unit of the currency',
      'labour is kept in minutes',
    ),
  },
  site: {
    trim_default: text('whether stem bases are usually cut off before weighing here'),
    opened_on: text(`${day} from which the site grows`, notRecorded),
    closed_on: text(`${day} on which the site stopped growing`, notYet),
  },
  site_method: { available: text('whether the site can use the method') },
  species: {
    scientific_name: text('scientific name'),
    taxon_id: text(
      'NCBI Taxonomy identifier of the species, as FoodOn 2025-02-18 gives it',
      'no source read gives one',
    ),
  },
  assessment_window: {
    contamination_days: amount('day', 'days from inoculation after which contamination is judged'),
    yield_days: amount('day', 'days from inoculation after which yield is judged'),
    first_look_days: amount('day', 'days from inoculation after which a first look is due', none),
    colonised_from_days: amount('day', 'earliest day from inoculation to expect full colonisation', none),
    colonised_to_days: amount('day', 'latest day from inoculation to expect full colonisation', none),
    pins_from_days: amount('day', 'earliest day from inoculation to expect pins', none),
    pins_to_days: amount('day', 'latest day from inoculation to expect pins', none),
    first_harvest_from_days: amount('day', 'earliest day from inoculation to expect a harvest', none),
    first_harvest_to_days: amount('day', 'latest day from inoculation to expect a first harvest', none),
    between_flushes_from_days: amount('day', 'fewest days to expect between flushes', none),
    between_flushes_to_days: amount('day', 'most days to expect between flushes', none),
  },
  material: {
    received_moisture_percent: amount(
      'percent',
      'moisture assumed of the material as received, wet basis',
      'nothing is assumed',
    ),
  },
  method: {
    min_celsius: amount('celsius', 'lowest temperature of its window', notApplicable),
    max_celsius: amount('celsius', 'highest temperature of its window', notApplicable),
    min_ph: amount('ph', 'lowest pH of its window', notApplicable),
    max_ph: amount('ph', 'highest pH of its window', notApplicable),
    min_minutes: amount('minute', 'shortest time of its window', notApplicable),
    max_minutes: amount('minute', 'longest time of its window', notApplicable),
  },
  material_moisture: {
    drained_moisture_percent: amount(
      'percent',
      'moisture assumed of the material once treated by the method and drained, wet basis',
    ),
  },
  suitability: {
    material_kind: text('kind of material', notApplicable),
    method_kind: text('kind of method', notApplicable),
    verdict: text('whether the two that are named suit each other'),
    reason_en: text('why, in English'),
    reason_es: text('why, in Spanish'),
  },
  substrate_lot: {
    source_name: text('where the material came from', notRecorded),
    cut_length_mm: amount('millimetre', 'length to which the material was cut', notRecorded),
  },
  spawn_lot: {
    strain: text('strain as its maker names it', notRecorded),
    form: text('what carries the mycelium'),
    maker: text('who made the spawn', notRecorded),
    maker_code: text('code that the maker gave the lot', notRecorded),
    made_on: text('day on which the spawn was made', notRecorded),
    parent_lot_id: text('spawn lot from which it was expanded', notRecorded),
    culture_name: text('culture from which it descends', notRecorded),
    generation: amount('one', 'transfers from the culture', notRecorded),
  },
  treatment_run: {
    started_at: text('when the load went in, UTC'),
    ended_at: text('when the load came out, UTC', 'it still runs'),
    water_millilitres: amount('millilitre', 'water in the vessel', notRecorded),
    lime_grams: amount('gram', 'hydrated lime put in', notRecorded),
    load_celsius_at_spawning: amount(
      'celsius',
      'temperature of the load when the spawn went in',
      notRecorded,
    ),
    load_grams: amount('gram', 'mass of the load as it went in', notRecorded),
  },
  treatment_reading: {
    place: text('whether it was read in the middle of the load or in the water around it'),
    celsius: amount('celsius', 'temperature', notRecorded),
    ph: amount('ph', 'pH', notRecorded),
  },
  label_sheet: {
    page_width_mm: amount('millimetre', 'width of the page'),
    page_height_mm: amount('millimetre', 'height of the page'),
    label_width_mm: amount('millimetre', 'width of a label'),
    label_height_mm: amount('millimetre', 'height of a label'),
    columns: amount('one', 'labels across'),
    rows: amount('one', 'labels down'),
    left_mm: amount('millimetre', 'left margin'),
    top_mm: amount('millimetre', 'top margin'),
    gap_across_mm: amount('millimetre', 'gap between labels across'),
    gap_down_mm: amount('millimetre', 'gap between labels down'),
  },
};
