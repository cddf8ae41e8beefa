import type { MetadataRoute } from 'next';
import { loadMessages } from '@/lib/ui/messages/load-messages';

/** What a phone needs to put Pinset on its home screen; made at the build, the same for everybody. */
export default function manifest(): MetadataRoute.Manifest {
  const { product, productLine } = loadMessages('en').common;
  return {
    id: '/',
    lang: 'en',
    name: product,
    short_name: product,
    description: productLine,
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
