import type { DayProblems } from './load-day-problems';

/** On a page without the filters: which days of its address it could not take, and of which its figures are. */
export function DayProblemsNotice({ days }: { readonly days: DayProblems }) {
  if (days.shown === undefined) return null;
  return (
    <div className="notice">
      {days.errors.map(({ field, text }) => (
        <p key={field}>{text}.</p>
      ))}
      <p>{days.shown}</p>
    </div>
  );
}
