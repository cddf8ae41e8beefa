import { isNoSignal } from '../page/is-no-signal';
import type { FormState } from './field-spec';
import { postedValues } from './posted-values';

type Action = (state: FormState, data: FormData) => Promise<FormState>;

/**
 * An action whose form keeps everything typed where no answer came, and says so in `sentence`. On the server it is the
 * action itself, so that the form is posted without script, too. Sending again is safe where
 * records have ids of the form; what is shown once has none, and its sentence says so (`loadFormWordsShownOnce`).
 */
export function unlessNoSignal(action: Action, sentence: string): Action {
  if (typeof window === 'undefined') return action;
  return async (state, data) => {
    try {
      return await action(state, data);
    } catch (error) {
      if (!isNoSignal(error)) throw error;
      const errors = [{ field: '', text: sentence }];
      return { values: postedValues(data), errors, questions: state.questions };
    }
  };
}
