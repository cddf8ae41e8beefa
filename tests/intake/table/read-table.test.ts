import { strToU8, zipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import writeXlsxFile from 'write-excel-file/node';
import { guessRecordLayout } from '@/lib/intake/table/guess-layout';
import { fieldsOfKind } from '@/lib/intake/table/kinds/fields-of-kind';
import { readTable } from '@/lib/intake/table/read-table';
import { unpacksWithin } from '@/lib/intake/table/unpacked-size';
