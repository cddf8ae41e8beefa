import { isNoSignal } from '../page/is-no-signal';

/**
 * An action that tells by `instead` that no answer came, with what its form showed and what was sent. On the server it is
 * the action itself, so that the form is posted without script, too.
 */
export function unlessNoAnswer<State>(
  action: (state: State, data: FormData) => Promise<State>,
  instead: (state: State, data: FormData) => State,
): (state: State, data: FormData) => Promise<State> {
  if (typeof window === 'undefined') return action;
  return async (state, data) => {
    try {
      return await action(state, data);
    } catch (error) {
      if (!isNoSignal(error)) throw error;
      return instead(state, data);
    }
  };
}
