import type { FigureView } from './figure-view';

/**
 * A figure in a table cell: "12.4 (8.1–18.3)", the unit being in the header. A star leads to the marks, which are
 * read out and shown on the page that the cell opens.
 */
export function FigureCell({ view }: { view: FigureView }) {
  return (
    <>
      <span className={view.kind === 'figure' ? undefined : 'quiet'}>{view.estimate}</span>
      {view.interval === '' ? null : (
        <>
          {' '}
          <br className="cell-break" />
          <span className="quiet">({view.interval})</span>
        </>
      )}
      {view.marks.length === 0 ? null : (
        <span className="mark">
          <span aria-hidden="true">*</span>
          <span className="visually-hidden"> {view.marks.join('. ')}</span>
        </span>
      )}
      {view.reason === '' ? null : <span className="cell-reason">{view.reason}</span>}
    </>
  );
}
