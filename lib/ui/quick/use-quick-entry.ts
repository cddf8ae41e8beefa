'use client';

import { type FormEvent, useEffect, useRef, useState } from 'react';
import { flushSync } from 'react-dom';
import { formToObject } from '@/lib/base/form-data';
import { newId } from '@/lib/base/new-id';
import type { OpenBatch } from '@/lib/growing/open-batch';
import type { SavedState } from '@/lib/offline/quick-outbox';
import { fieldId } from '../form/field-id';
import type { CheckEntry, CheckedEntry, QuickProblem } from './checked-entry';
import type { KeptEntry, QuickProps } from './quick-props';
import type { TypedEntry } from './typed-entry';

type Questions = Extract<CheckedEntry, { kind: 'ask' }>['questions'];
type Ready = Extract<CheckedEntry, { kind: 'ready' }>;

/** An entry that is kept, as its page goes on telling about it. */
export type Kept = {
  readonly entry: KeptEntry;
  readonly batch: OpenBatch;
  readonly summary: string;
  readonly keptAt: number;
  readonly state: SavedState;
};

type Options = {
  readonly check: CheckEntry;
  /** The field that takes the focus once the batch is known. */
  readonly firstField: string;
  readonly onKept?: (typed: TypedEntry) => void;
};

/** The life of a quick entry in the browser: typed, asked about, kept, taken back, followed by the next. */
export function useQuickEntry(props: QuickProps, { check, firstField, onKept }: Options) {
  const { snapshot, words, outbox } = props;
  const form = useRef<HTMLFormElement>(null);
  const saving = useRef(false);
  const [id, setId] = useState(props.firstId);
  const [clock, setClock] = useState(() => new Date(props.now));
  const [batches, setBatches] = useState(snapshot.batches);
  const [batchId, setBatchId] = useState(props.batchId ?? '');
  const [typed, setTyped] = useState<TypedEntry>({});
  const [problems, setProblems] = useState<readonly QuickProblem[]>([]);
  const [questions, setQuestions] = useState<Questions>([]);
  const [kept, setKept] = useState<Kept>();

  const refresh = () => {
    if (form.current) setTyped(formToObject(new FormData(form.current)));
  };
  // Within the tap itself: a phone opens its keypad only then.
  const focusFirst = () => document.getElementById(fieldId(firstField))?.focus();

  const started = useRef(false);
  useEffect(() => {
    if (started.current) return;
    started.current = true;
    setClock(new Date());
    if (form.current) setTyped(formToObject(new FormData(form.current)));
    const errorsShown = document.querySelector('.error-summary') !== null;
    if (props.batchId !== undefined && !errorsShown) document.getElementById(fieldId(firstField))?.focus();
  }, [props.batchId, firstField]);

  const stopWatching = useRef(() => {});
  useEffect(() => () => stopWatching.current(), []);

  const keep = async (ready: Ready, confirmed: readonly string[], entryTyped: TypedEntry) => {
    if (!outbox || saving.current) return;
    saving.current = true;
    stopWatching.current();
    // Watched before it is kept: it may be sent before this page has heard that it is kept.
    let told: SavedState | undefined;
    stopWatching.current = outbox.watch(id, (state) => {
      told = state;
      setKept((now) => (now?.entry.id === id ? { ...now, state } : now));
    });
    try {
      const { entryKind: kind, input, batch, after, summary } = ready;
      const saved = await outbox.save({ id, kind, input: { id, ...input }, confirmed });
      const state = told ?? saved;
      onKept?.(entryTyped);
      setBatches((all) => all.map((one) => (one.id === after.id ? after : one)));
      setKept({ entry: { id, kind, batchId: batch.id }, batch, summary, keptAt: Date.now(), state });
    } catch {
      setProblems([{ field: '', text: words.problem.failed }]);
    } finally {
      saving.current = false;
    }
  };

  /** Checks what the form holds and keeps it; `confirmed` are the questions answered with yes. */
  const save = (confirmed: readonly string[] = []) => {
    if (!form.current || saving.current) return;
    const entryTyped = formToObject(new FormData(form.current));
    const now = new Date();
    const checked = check(entryTyped, { batches, words, person: snapshot.person, now, confirmed });
    setClock(now);
    setTyped(entryTyped);
    setProblems(checked.kind === 'wrong' ? checked.problems : []);
    setQuestions(checked.kind === 'ask' ? checked.questions : []);
    if (checked.kind === 'ready') void keep(checked, confirmed, entryTyped);
  };

  /** The next entry: of the same batch, or with the batch still to be chosen. */
  const next = (sameBatch: boolean) => {
    flushSync(() => {
      setId(newId());
      setClock(new Date());
      setTyped({});
      if (!sameBatch) setBatchId('');
      setKept(undefined);
    });
    refresh();
    if (sameBatch) focusFirst();
    else form.current?.closest('main')?.querySelector<HTMLElement>('h1')?.focus();
  };

  return {
    ...{ form, id, clock, batches, batchId, typed, problems, questions, kept, refresh, save, next },
    batch: batches.find((one) => one.id === batchId),
    submit: (event: FormEvent) => {
      if (!outbox) return;
      event.preventDefault();
      save();
    },
    /** Chooses a batch; by a tap it goes on to the first field, by keyboard it stays in the list. */
    choose: (chosen: string, goOn: boolean) => {
      flushSync(() => setBatchId(chosen));
      refresh();
      if (goOn) focusFirst();
    },
    change: () => {
      setQuestions([]);
      focusFirst();
    },
    undo: async () => {
      if (!outbox || !kept) return;
      const state = await outbox.undo(kept.entry.id);
      stopWatching.current();
      setKept({ ...kept, state });
    },
  };
}

export type QuickEntryState = ReturnType<typeof useQuickEntry>;
