import type { Route } from 'next';
import { FigureHistory } from './figure-history';
import { FigureMarks } from './figure-marks';
import type { FigureView } from './figure-view';

type Props = {
  readonly label: string;
  readonly view: FigureView;
  /** The page of the rows behind the figure. */
  readonly rows?: Route;
};

/** One figure, large, with its doubt beside it and its history behind a press. */
export function Figure({ label, view, rows }: Props) {
  return (
    <div className="figure">
      <p className="figure-label">{label}</p>
      <p className={view.kind === 'cannot' ? 'figure-reason' : 'figure-estimate'}>
        {view.estimate}
        {view.unit === '' ? null : <span className="figure-unit">{`\u00a0${view.unit}`}</span>}
        {view.interval === '' ? null : <span className="figure-interval"> ({view.interval})</span>}
      </p>
      {view.reason === '' ? null : <p className="figure-detail">{view.reason}</p>}
      <p className="figure-detail quiet">{view.size.join(', ')}</p>
      <FigureMarks marks={view.marks} />
      <FigureHistory view={view} {...(rows === undefined ? {} : { rows })} />
    </div>
  );
}
