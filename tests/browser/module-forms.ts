import type { FormPage } from './find-address';
import { importForms } from './import-forms';
import { leavingForms } from './leaving-forms';
import { noticeForms } from './notice-forms';
import { programmeForms } from './programme-forms';
import { reportForms } from './report-forms';
import { reportSharingForms } from './report-sharing-forms';
import { tokenForms } from './token-forms';
import { wordsForms } from './words-forms';

/** Forms that have lists of their own. */
export const moduleForms: readonly FormPage[] = [
  ...importForms,
  ...leavingForms,
  ...noticeForms,
  ...programmeForms,
  ...reportForms,
  ...reportSharingForms,
  ...tokenForms,
  ...wordsForms,
];
