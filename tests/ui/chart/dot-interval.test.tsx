import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, test } from 'vitest';
import { IntervalStrip } from '@/lib/ui/chart/interval-strip';
import { markShape, seriesClass, seriesCount } from '@/lib/ui/chart/mark-shape';
import { rateScale } from '@/lib/ui/chart/rate-scale';

describe('the scale of rates', () => {
  test('starts at zero and ends above the largest value', () => {
    const { place, ticks } = rateScale([31.2, 48.9]);
    expect(place(0)).toBe(0);
    expect(place(48.9)).toBeLessThanOrEqual(100);
    expect(ticks[0]).toBe(0);
    expect(ticks.length).toBeLessThanOrEqual(6);
  });

  test('of nothing but zeros still has a width', () => {
    expect(rateScale([0, 0]).place(0)).toBe(0);
    expect(rateScale([]).ticks.length).toBeGreaterThan(1);
  });
});

describe('a strip', () => {
  const scale = rateScale([40]);
  const row = { key: 'a', label: 'A', text: '10.0 (5.0–20.0)', size: '12 batches' };

  test('draws the interval as a line and the estimate as a mark at their places', () => {
    const markup = renderToStaticMarkup(
      <IntervalStrip row={{ ...row, estimate: 10, low: 5, high: 20 }} scale={scale} />,
    );
    expect(markup).toContain('x1="12.5%" x2="50%"');
    expect(markup).toContain('<svg x="25%"');
  });

  test('of counts draws neither', () => {
    const markup = renderToStaticMarkup(<IntervalStrip row={row} scale={scale} />);
    expect(markup).not.toContain('<path');
    expect(markup).not.toContain('stroke="currentColor"');
  });
});

test('each series has a shape of its own, and the eighth begins again', () => {
  const shapes = Array.from({ length: seriesCount }, (_, series) => markShape(series));
  expect(new Set(shapes).size).toBe(seriesCount);
  expect(markShape(seriesCount)).toBe(markShape(0));
  expect(seriesClass(seriesCount)).toBe('series-1');
});
