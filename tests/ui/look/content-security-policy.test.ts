import { describe, expect, test } from 'vitest';
import { contentSecurityPolicy } from '@/lib/ui/content-security-policy';

function directive(name: string, development = false): string | undefined {
  const found = contentSecurityPolicy('bm9uY2U=', development)
    .split('; ')
    .find((one) => one.startsWith(`${name} `));
  return found?.slice(name.length + 1);
}

describe('the content security policy', () => {
  test('lets only scripts with the nonce of this answer run', () => {
    expect(directive('script-src')).toBe("'self' 'nonce-bm9uY2U=' 'strict-dynamic'");
  });

  test('lets the development server alone evaluate strings', () => {
    expect(directive('script-src', true)).toContain("'unsafe-eval'");
  });

  test('allows no frames, no plug-ins, no other base and forms only to ourselves', () => {
    expect(directive('frame-ancestors')).toBe("'none'");
    expect(directive('object-src')).toBe("'none'");
    expect(directive('base-uri')).toBe("'none'");
    expect(directive('form-action')).toBe("'self'");
    expect(directive('default-src')).toBe("'self'");
  });

  test('keeps the nonce out of styles, where it would switch inline styles off', () => {
    expect(directive('style-src')).not.toContain('nonce');
  });
});
