'use client';

import { useOutbox } from '../offline/use-outbox';
import { QuickContamination } from './quick-contamination';
import type { QuickProps } from './quick-props';
import { withOutbox } from './with-outbox';

/** The quick entry on a server's page: with script it keeps entries on the phone, without it posts the form. */
export function ContaminationOnPhone({ networkId, ...props }: QuickProps & { readonly networkId: string }) {
  const outbox = useOutbox(props.snapshot.person.id, networkId);
  return (
    <QuickContamination {...props} {...(outbox === undefined ? {} : withOutbox(outbox.quick, props.words))} />
  );
}
