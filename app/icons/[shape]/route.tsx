import { ImageResponse } from 'next/og';
import { productMark } from '@/lib/ui/page/product-mark';

const shapes: Readonly<Record<string, { readonly pixels: number; readonly maskable: boolean }>> = {
  '180': { pixels: 180, maskable: true },
  '192': { pixels: 192, maskable: false },
  '512': { pixels: 512, maskable: false },
  maskable: { pixels: 512, maskable: true },
};
const kept = { 'cache-control': 'public, max-age=86400' };

/** The icons of pages (`mark.svg`) and of home screens, all from the one drawing of the product's mark. */
export async function GET(_request: Request, { params }: RouteContext<'/icons/[shape]'>): Promise<Response> {
  const { shape } = await params;
  if (shape === 'mark.svg')
    return new Response(productMark(false), { headers: { ...kept, 'content-type': 'image/svg+xml' } });
  const wanted = shapes[shape];
  if (!wanted) return new Response(null, { status: 404 });
  const { pixels, maskable } = wanted;
  const source = `url(data:image/svg+xml;base64,${Buffer.from(productMark(maskable)).toString('base64')})`;
  return new ImageResponse(
    <div style={{ width: '100%', height: '100%', backgroundImage: source, backgroundSize: '100% 100%' }} />,
    { width: pixels, height: pixels, headers: kept },
  );
}
