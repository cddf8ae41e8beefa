import { z } from 'zod';
import { countField } from '../fields/count-field';
import { idField, optionalIdField } from '../fields/id-field';
import { numberField } from '../fields/number-field';
import { revisionField } from '../fields/revision-field';
import { textField } from '../fields/text-field';

const millimetres = numberField({ least: 0, most: 1000, places: 2 });
const size = numberField({ least: 5, most: 1000, places: 2 });

const layout = {
  name: textField(60),
  pageWidthMm: size,
  pageHeightMm: size,
  labelWidthMm: size,
  labelHeightMm: size,
  columns: countField({ most: 20 }),
  rows: countField({ most: 50 }),
  leftMm: millimetres,
  topMm: millimetres,
  gapAcrossMm: millimetres,
  gapDownMm: millimetres,
};

/** A sheet of labels as its packet describes it; a roll is a page of the label's own size, one across and one down. */
export const addLabelSheetInput = z.object({ id: optionalIdField, ...layout });

export const correctLabelSheetInput = z.object({
  id: idField,
  revision: revisionField,
  reason: textField(1000),
  ...layout,
});
