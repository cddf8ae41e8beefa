'use client';

import {
  CartesianGrid,
  ErrorBar,
  ResponsiveContainer,
  Scatter,
  ScatterChart,
  Tooltip,
  XAxis,
  YAxis,
} from 'recharts';
import type { ChartRow } from './chart-row';
import { ExploreTip } from './explore-tip';

/** The rows that have an estimate, with the distances to their limits that an error bar needs. */
function points(rows: readonly ChartRow[]) {
  return rows.flatMap((row) => {
    const { estimate, low, high } = row;
    if (estimate === undefined) return [];
    const label = row.group === undefined ? row.label : `${row.group}, ${row.label}`;
    const reach = low === undefined || high === undefined ? [0, 0] : [estimate - low, high - estimate];
    return [{ label, estimate, reach, text: row.text, size: row.size }];
  });
}

export function ExplorePlot({ rows, unit }: { rows: readonly ChartRow[]; unit: string }) {
  const data = points(rows);
  return (
    <ResponsiveContainer width="100%" height={Math.max(160, 60 + data.length * 72)}>
      <ScatterChart margin={{ top: 8, right: 16, bottom: 8, left: 8 }}>
        <CartesianGrid stroke="var(--line)" horizontal={false} />
        <XAxis
          type="number"
          dataKey="estimate"
          domain={[0, 'auto']}
          unit={` ${unit}`}
          stroke="var(--quiet)"
        />
        <YAxis
          type="category"
          dataKey="label"
          width={130}
          reversed
          allowDuplicatedCategory={false}
          stroke="var(--quiet)"
        />
        <Tooltip content={({ payload }) => <ExploreTip point={payload?.[0]?.payload} />} />
        <Scatter data={data} fill="var(--series-1)" isAnimationActive={false}>
          <ErrorBar dataKey="reach" direction="x" stroke="var(--series-1)" strokeWidth={3} width={0} />
        </Scatter>
      </ScatterChart>
    </ResponsiveContainer>
  );
}
