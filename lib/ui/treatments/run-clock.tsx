'use client';

import { useEffect, useState } from 'react';
import { formatDuration } from '../format/duration-text';
import { fillPlaces } from '../quick/fill-places';

export type ClockWords = {
  /** "{length} under way" */
  readonly running: string;
  /** "{length} to go, until 16:40"; empty where nothing is waited for. */
  readonly until: string;
  /** "since 16:40, {length} ago" */
  readonly over: string;
};

type Props = {
  readonly startedAt: number;
  readonly target: number | null;
  /** The server's clock when the page was drawn: a phone's own may be wrong. */
  readonly now: number;
  readonly locale: string;
  readonly words: ClockWords;
};

const tick = 5_000;

/** How long a run has gone on and how long it still has to. Without script it stands as of the page's time. */
export function RunClock({ startedAt, target, now, locale, words }: Props) {
  const [time, setTime] = useState(now);
  useEffect(() => {
    const ahead = now - Date.now();
    const timer = setInterval(() => setTime(Date.now() + ahead), tick);
    return () => clearInterval(timer);
  }, [now]);
  const length = (milliseconds: number) => formatDuration(milliseconds / 60_000, locale);
  const left = target === null ? null : target - time;
  return (
    <div role="timer">
      <p className="run-clock">{fillPlaces(words.running, { length: length(time - startedAt) })}</p>
      {left === null ? null : (
        <p>
          {left > 0
            ? fillPlaces(words.until, { length: length(left + 59_999) })
            : fillPlaces(words.over, { length: length(-left) })}
        </p>
      )}
    </div>
  );
}
