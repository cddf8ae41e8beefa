/** The tables of the archive and what a row of each is; a table comes after those that it names. */
export const packageTables = {
  site: 'Sites where the network grows.',
  species: 'Species grown, with the names that the network uses.',
  assessment_window:
    'Days from inoculation after which contamination and yield are judged, for a species in a kind of container.',
  material: 'Substrate materials.',
  method: 'Treatment methods and the window that a run of each has to keep.',
  material_moisture: 'Moisture assumed of a material once treated by a method and drained.',
  suitability: 'What suits what: each row names two of species, kind of material and kind of method.',
  site_method: 'Which methods a site can use.',
  label_sheet: 'Sheets of labels that the network uses besides the ready ones.',
  substrate_lot: 'Substrate lots as they came.',
  substrate_receipt: 'What a site received of a substrate lot.',
  spawn_lot: 'Spawn lots as they came.',
  spawn_receipt: 'What a site received of a spawn lot.',
  treatment_run: 'Treatment runs: one load treated in one go.',
  treatment_allocation: 'Runs that another site may draw on.',
  treatment_reading: 'Temperatures and pH read during a run.',
  batch: 'Batches: units inoculated on one day with one species at one site.',
  batch_component: 'What a batch is made of, and how each part was treated.',
  spawn_share: 'Spawn lots that went into a batch.',
  second_life_source: 'Spent units of a batch that went on as another batch.',
  bed_layer: 'Layers of a bed.',
  look: 'Looks at which nothing new was found.',
  finding: 'Units newly found contaminated.',
  finding_unit: 'Numbers of the units of a finding.',
  finding_follow_up: 'What was done later with the units of a finding.',
  loss: 'Units lost for a cause other than contamination.',
  loss_unit: 'Numbers of the units of a loss.',
  check: 'Days on which a batch was seen fully colonised or with pins.',
  weighing: 'Times on the scale.',
  weighing_line: 'What each batch had of a weighing.',
  weighing_destination: 'Where the mushrooms of a weighing went.',
  condition_place: 'Rooms, tents, shelves and corners where conditions are read.',
  condition_import: 'Tables of loggers taken in at one go.',
  condition_reading: 'Temperature, relative humidity and carbon dioxide read at a place.',
  placement: 'Where a batch stood from a day on.',
  lot_price: 'What a lot cost.',
  cost_note: 'What a batch or a run cost in labour, supplies, fuel and water.',
  sale: 'Sales.',
  participant: 'People who took part, without their names: one row each, so that each can be counted once.',
  training: 'Trainings held.',
  training_question: 'What was asked before and after a training, and how many gave each answer.',
  training_attendance: 'Who of the participants took part in a training.',
  adopted_practice: 'Practices that a site took up.',
} as const;

export type PackageTable = keyof typeof packageTables;

export const packageTableNames = Object.keys(packageTables) as readonly PackageTable[];

/**
 * Columns that stay behind: the network of a loaded archive is another one, people are not in it, and a site that left the
 * first network has not left the other.
 */
export const columnsLeftOut: readonly string[] = [
  'network_id',
  'created_by_id',
  'started_by_id',
  'left_at',
  'figures_withdrawn',
];
