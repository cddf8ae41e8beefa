import type { FormState } from './field-spec';
import { postedValues } from './posted-values';
import { unlessNoAnswer } from './unless-no-answer';

type Action = (state: FormState, data: FormData) => Promise<FormState>;

/**
 * An action whose form keeps everything typed where no answer came, and says so in `sentence`. Sending again is safe where
 * records have ids of the form; what is shown once has none, and its sentence says so (`loadFormWordsShownOnce`).
 */
export function unlessNoSignal(action: Action, sentence: string): Action {
  return unlessNoAnswer(action, ({ questions }, data) => ({
    values: postedValues(data),
    errors: [{ field: '', text: sentence }],
    questions,
  }));
}
