import access from './en/access.json';
import api from './en/api.json';
import batches from './en/batches.json';
import common from './en/common.json';
import comparison from './en/comparison.json';
import conditions from './en/conditions.json';
import costs from './en/costs.json';
import entry from './en/entry.json';
import errors from './en/errors.json';
import exported from './en/export.json';
import failure from './en/failure.json';
import figures from './en/figures.json';
import findings from './en/findings.json';
import help from './en/help.json';
import history from './en/history.json';
import importing from './en/import.json';
import insight from './en/insight.json';
import labels from './en/labels.json';
import leaving from './en/leaving.json';
import links from './en/links.json';
import lots from './en/lots.json';
import notices from './en/notices.json';
import offline from './en/offline.json';
import people from './en/people.json';
import photos from './en/photos.json';
import programme from './en/programme.json';
import questions from './en/questions.json';
import quick from './en/quick.json';
import report from './en/report.json';
import settings from './en/settings.json';
import sharing from './en/sharing.json';
import sites from './en/sites.json';
import stories from './en/stories.json';
import sums from './en/sums.json';
import today from './en/today.json';
import trace from './en/trace.json';
import treatments from './en/treatments.json';
import trials from './en/trials.json';
import vocabulary from './en/vocabulary.json';
import watch from './en/watch.json';
import weighings from './en/weighings.json';

/** Every English text, one area a file. A new area needs one line here and one in `es.ts`. */
export const en = {
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

/** The shape every language has to have. */
export type Messages = typeof en;
