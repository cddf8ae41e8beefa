'use client';

import { type ChangeEvent, useEffect, useRef, useState } from 'react';
import type { OpenBatch } from '@/lib/growing/open-batch';
import type { ShedSnapshot } from '@/lib/offline/shed-snapshot';
import { fieldId } from '../form/field-id';
import { FieldError } from '../form/fields/field-error';
import { sentenceCase } from '../format/sentence-case';
import { batchLine } from './batch-line';
import { fillPlaces } from './fill-places';
import { findBatches } from './likely-batches';
import type { QuickWords } from './quick-words';

// Six lines of 64 px fit a phone's first screen under the heading.
const shortList = 6;
const mostFound = 12;

type Props = {
  readonly name: string;
  /** Likeliest first. */
  readonly batches: readonly OpenBatch[];
  readonly chosen: string;
  readonly choose: (id: string, goOn: boolean) => void;
  readonly words: QuickWords;
  readonly person: ShedSnapshot['person'];
  readonly error: string | undefined;
};

/** The open batches as large choices: a short list, the rest folded, a search once scripts run. */
export function BatchPicker(props: Props) {
  const { name, batches, chosen, words, error } = props;
  const [scripted, setScripted] = useState(false);
  const [search, setSearch] = useState('');
  const [open, setOpen] = useState(false);
  const byPointer = useRef(false);
  useEffect(() => setScripted(true), []);

  const sites = new Set(batches.map(({ siteId }) => siteId)).size;
  const shown = batches.find(({ id }) => id === chosen);
  const folded = scripted && shown !== undefined && !open;
  const choose = (event: ChangeEvent<HTMLInputElement>) => {
    props.choose(event.target.value, byPointer.current);
    if (byPointer.current) {
      setOpen(false);
      setSearch('');
    }
  };
  const tile = (batch: OpenBatch, first: boolean) => (
    <label key={batch.id} className="choice tile">
      <input
        id={first ? fieldId(name) : undefined}
        type="radio"
        name={name}
        value={batch.id}
        checked={batch.id === chosen}
        onChange={choose}
        aria-invalid={error === undefined ? undefined : true}
      />
      <span>
        <strong>{batch.code}</strong>
        <span className="tile-line">{batchLine(batch, words, props.person, sites)}</span>
      </span>
    </label>
  );
  if (folded)
    return (
      <div className="chosen-batch">
        <input type="hidden" name={name} value={chosen} />
        <p>{batchLine(shown, words, props.person, sites)}</p>
        <button
          id={fieldId(name)}
          type="button"
          className="button button-plain"
          onClick={() => setOpen(true)}
        >
          {words.batch.change}
        </button>
      </div>
    );
  const rest = batches.slice(shortList);
  const found = findBatches(batches, search).slice(0, mostFound);
  const searching = search.trim() !== '';
  const noMatch = fillPlaces(words.batch.noMatch, { text: search.trim() });
  const searchText = found.length === 0 ? noMatch : fillPlaces(words.batch.found, { count: found.length });
  return (
    <fieldset
      className={error === undefined ? 'field' : 'field field-wrong'}
      onPointerDown={() => {
        byPointer.current = true;
      }}
      onKeyDown={() => {
        byPointer.current = false;
      }}
    >
      <legend className="field-label">{sentenceCase(words.fields.batchId)}</legend>
      <FieldError name={name} text={error} words={words.form} />
      <div className="tiles">
        {batches.slice(0, shortList).map((batch, index) => tile(batch, index === 0))}
      </div>
      {scripted && rest.length > 0 ? (
        <div className="batch-search">
          <label htmlFor="batch-search">{words.batch.search}</label>
          <input
            id="batch-search"
            type="search"
            className="input"
            autoComplete="off"
            autoCapitalize="characters"
            value={search}
            onChange={(event) => setSearch(event.target.value)}
            onKeyDown={(event) => {
              if (event.key === 'Enter') event.preventDefault();
            }}
          />
          <p role="status" className={searching && found.length === 0 ? '' : 'visually-hidden'}>
            {searching ? searchText : ''}
          </p>
          <div className="tiles">{found.map((batch) => tile(batch, false))}</div>
        </div>
      ) : null}
      {rest.length > 0 && !searching ? (
        <details open={rest.some(({ id }) => id === chosen) ? true : undefined}>
          <summary>{fillPlaces(words.batch.all, { count: batches.length })}</summary>
          <div className="tiles">{rest.map((batch) => tile(batch, false))}</div>
        </details>
      ) : null}
    </fieldset>
  );
}
