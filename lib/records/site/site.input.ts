import { z } from 'zod';
import { trimStates } from '@/lib/growing/vocabulary';
import { choiceField } from '../fields/choice-field';
import { codeField } from '../fields/code-field';
import { optionalDateField } from '../fields/date-field';
import { idField, optionalIdField } from '../fields/id-field';
import { revisionField } from '../fields/revision-field';
import { optionalTextField, textField } from '../fields/text-field';
import { zoneField } from '../fields/zone-field';

export const siteKinds = [
  'community_garden',
  'school_garden',
  'farm',
  'allotment',
  'indoor_room',
  'other',
] as const;

const siteFields = {
  code: codeField,
  name: textField(120),
  kind: choiceField(siteKinds),
  timeZone: zoneField,
  trimDefault: choiceField(trimStates),
  openedOn: optionalDateField,
  closedOn: optionalDateField,
  note: optionalTextField(),
};

export const addSiteInput = z.object({ id: optionalIdField, ...siteFields });

export const correctSiteInput = z.object({
  id: idField,
  revision: revisionField,
  reason: textField(1000),
  ...siteFields,
});
