/** While a form is sent: a line that moves, and the word for whoever does not see it. */
export function SendingLine({ pending, saving }: { readonly pending: boolean; readonly saving: string }) {
  return (
    <>
      <p className="visually-hidden" role="status">
        {pending ? saving : ''}
      </p>
      {pending ? <div className="progress-line" /> : null}
    </>
  );
}
