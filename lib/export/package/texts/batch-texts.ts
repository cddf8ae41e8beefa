import { amount, day, notApplicable, notRecorded, type TableTexts, text } from './column-text';

/** Batches and what is written down about them. */
export const batchTexts: TableTexts = {
  batch: {
    unit_count: amount('one', 'containers inoculated; a bed is one'),
    inoculated_on: text(`${day} on which the spawn went in`),
    mixed_method: text('whether its substrates were treated in different ways'),
    mixed_material: text('whether it is of several materials'),
    wet_grams: amount('gram', 'mass of the filled substrate without spawn', notRecorded),
    dry_mass_from: text('from what the dry mass was worked out'),
    dry_grams: amount(
      'gram',
      'dry substrate and dry supplement, without spawn and additives; what biological efficiency divides by',
      'cannot be worked out',
    ),
    dry_supplement_grams: amount('gram', 'of it dry supplement'),
    dry_assumed: text('whether an assumed moisture went into the dry mass'),
    spawn_grams: amount('gram', 'mass of the spawn', notRecorded),
    bed_area_cm2: { about: 'area of a bed, in square centimetres', blank: 'not a bed, or not recorded' },
    log_wood_code: amount(
      'one',
      'wood of a log, by its number in the table of log woods',
      'not a log, or not recorded',
    ),
    log_diameter_mm: amount('millimetre', 'middle diameter of a log', 'not a log, or not recorded'),
    log_length_mm: amount('millimetre', 'length of a log', 'not a log, or not recorded'),
    log_green_grams: amount('gram', 'mass of the logs when cut', 'not a log, or not recorded'),
    second_life: text('whether it was started from spent units of other batches'),
    second_life_way: text('how the spent units went on', notApplicable),
    contamination_assessed_on: text(`${day} from which its contamination is judged`, 'no window is known'),
    yield_assessed_on: text(`${day} from which its yield is judged`, 'no window is known'),
    closed_on: text(`${day} on which it was closed`, 'it is open'),
    close_reason: text('why it was closed', 'it is open'),
    spent_destination: text('where the spent substrate went', notRecorded),
    no_harvest: text('whether nothing was picked, or what was picked was not weighed', notApplicable),
    label_key: text('random key by which a printed label finds the batch'),
  },
  batch_component: {
    role: text('substrate, supplement, or additive, which stays out of the dry mass'),
    mass_stage: text('whether the mass was taken before treatment or as filled'),
  },
  look: {
    looked_on: text(`${day} on which all living units were looked at and none was newly contaminated`),
  },
  finding: {
    found_on: text(`${day} on which the units were found contaminated`),
    units: amount('one', 'units newly found contaminated; a unit counts once for its whole life'),
    sign: text('what was seen or smelt; never a diagnosis'),
    stage: text('whether the batch was colonising or cropping'),
  },
  finding_follow_up: { done_on: text(`${day} on which it was done`) },
  loss: {
    lost_on: text(`${day} on which the loss was seen`),
    units: amount('one', 'units lost for a cause other than contamination'),
    contaminated_units: amount('one', 'how many of them had been found contaminated before'),
    cause: text('why they were lost'),
  },
  check: {
    checked_on: text(`${day} on which it was seen`),
    kind: text('what was seen: fully colonised, or pins'),
  },
  weighing: {
    weighed_on: text(`${day} of the weighing`),
    fresh_grams: amount('gram', 'fresh mushrooms on the scale'),
    trim_state: text('whether stem bases were cut off before weighing'),
    grade: text('grade in the site’s own words', notRecorded),
  },
  weighing_line: {
    flush: amount('one', 'number of the flush, counted from 1'),
    fresh_grams: amount('gram', 'what of the weighing came from this batch; lines add up to the weighing'),
    shared_weighing: text('whether a crate of several batches was shared out by their living units'),
    forced_flush: text('logs: whether they were soaked to fruit', notRecorded),
  },
  weighing_destination: { destination: text('where the mushrooms went') },
  second_life_source: {
    source_batch_id: text('batch from which the spent units came'),
    source_site_id: text('site of that batch'),
    units_moved: amount('one', 'units that went on'),
  },
  bed_layer: {
    laid_on: text(`${day} on which the layer was laid`),
    position: amount('one', 'place in the bed, counted from the ground'),
    material: text('what the layer is made of'),
    thickness_mm: amount('millimetre', 'thickness', notRecorded),
    millilitres: amount('millilitre', 'volume', notRecorded),
  },
  condition_import: {
    readings_read: amount('one', 'readings in the logger’s table'),
    readings_added: amount('one', 'readings of it that were not there yet'),
    first_at: text('first reading, UTC'),
    last_at: text('last reading, UTC'),
  },
  condition_reading: {
    import_id: text('table of a logger that it came in with', 'read by hand'),
    measure: text('what was read'),
    value: {
      about:
        'value: degrees Celsius (UCUM Cel), percent relative humidity (%) or parts per million of carbon dioxide ([ppm]), by the measure',
    },
  },
  placement: { placed_on: text(`${day} from which the batch stood there`) },
};
