import { z } from 'zod';

const password = z.string('missing').min(1, 'missing').max(500, 'too-long');

export const changePasswordInput = z.object({ currentPassword: password, newPassword: password });
