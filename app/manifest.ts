import type { MetadataRoute } from 'next';
import { getTranslations } from 'next-intl/server';

/** What a phone needs to put Pinset on its home screen. */
export default async function manifest(): Promise<MetadataRoute.Manifest> {
  const t = await getTranslations('common');
  return {
    id: '/',
    name: t('product'),
    short_name: t('product'),
    description: t('productLine'),
    start_url: '/today',
    scope: '/',
    display: 'standalone',
    background_color: '#f7f5ef',
    theme_color: '#f7f5ef',
    icons: [
      { src: '/icons/192', sizes: '192x192', type: 'image/png', purpose: 'any' },
      { src: '/icons/512', sizes: '512x512', type: 'image/png', purpose: 'any' },
      { src: '/icons/maskable', sizes: '512x512', type: 'image/png', purpose: 'maskable' },
    ],
  };
}
