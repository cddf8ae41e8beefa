import 'server-only';
import { environment } from '@/lib/base/environment';

/** The address behind which an invitation is accepted. */
export function joinLink(token: string): string {
  return `${environment().NEXTAUTH_URL.replace(/\/$/, '')}/join/${token}`;
}
