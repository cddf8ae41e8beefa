import { type FormEvent, startTransition } from 'react';

/**
 * Sends a form to its action without emptying it, as React does after an action: no script can put a chosen file back.
 * For `onSubmit`, beside the `action` that the form has without script.
 */
export function sendKept(act: (data: FormData) => void) {
  return (event: FormEvent<HTMLFormElement>): void => {
    event.preventDefault();
    const { submitter } = event.nativeEvent as SubmitEvent;
    const data = new FormData(event.currentTarget, submitter);
    startTransition(() => act(data));
  };
}
