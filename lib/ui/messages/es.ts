import type { Messages } from './en';
import access from './es/access.json';
import api from './es/api.json';
import batches from './es/batches.json';
import common from './es/common.json';
import comparison from './es/comparison.json';
import conditions from './es/conditions.json';
import costs from './es/costs.json';
import entry from './es/entry.json';
import errors from './es/errors.json';
import exported from './es/export.json';
import failure from './es/failure.json';
import figures from './es/figures.json';
import findings from './es/findings.json';
import help from './es/help.json';
import history from './es/history.json';
import importing from './es/import.json';
import insight from './es/insight.json';
import labels from './es/labels.json';
import leaving from './es/leaving.json';
import links from './es/links.json';
import lots from './es/lots.json';
import notices from './es/notices.json';
import offline from './es/offline.json';
import people from './es/people.json';
import photos from './es/photos.json';
import programme from './es/programme.json';
import questions from './es/questions.json';
import quick from './es/quick.json';
import report from './es/report.json';
import settings from './es/settings.json';
import sharing from './es/sharing.json';
import sites from './es/sites.json';
import stories from './es/stories.json';
import sums from './es/sums.json';
import today from './es/today.json';
import trace from './es/trace.json';
import treatments from './es/treatments.json';
import trials from './es/trials.json';
import vocabulary from './es/vocabulary.json';
import watch from './es/watch.json';
import weighings from './es/weighings.json';

/** Every Spanish text; the type makes a missing one an error of the compiler. */
export const es: Messages = {
  access,
  api,
  batches,
  common,
  comparison,
  conditions,
  costs,
  entry,
  errors,
  export: exported,
  failure,
  figures,
  findings,
  help,
  history,
  import: importing,
  insight,
  labels,
  leaving,
  links,
  lots,
  notices,
  offline,
  people,
  photos,
  programme,
  questions,
  quick,
  report,
  settings,
  sharing,
  sites,
  stories,
  sums,
  today,
  trace,
  treatments,
  trials,
  vocabulary,
  watch,
  weighings,
};
