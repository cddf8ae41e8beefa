/** Tables that are not in the archive, each with its reason. */
export const leftOut: Readonly<Record<string, readonly string[]>> = {
  'people, their sign-ins and what they chose': [
    ...['person', 'person_contact', 'account', 'session', 'setup_link', 'membership', 'membership_site'],
    ...[
      'invitation',
      'digest_choice',
      'digest_sent',
      'api_token',
      'participant',
      'participant_contact',
      'training_attendance',
    ],
  ],
  'worked out from the records': [
    'fitted_result',
    'fit_turn',
    'batch_outcome',
    'outcome_summary',
    'outcome_site_total',
    'outcome_network_total',
    'outcome_due',
    'outcome_version',
    'outcome_site_version',
    'signal_answer',
  ],
  'how the records came to be': [
    'history',
    'entry_receipt',
    'api_receipt',
    'intake_file',
    'intake_content',
    'intake_row',
  ],
  'documents of their own': ['report', 'report_ground', 'report_story', 'report_picture'],
  'links that would no longer open anything, and who opened them': ['report_link', 'report_link_visit'],
  'what each site agreed with this network': ['sharing_agreement'],
  'what people of the network told each other': ['lot_notice', 'lot_notice_site', 'lot_notice_read'],
  pictures: ['photo', 'photo_content'],
  'trials: a started one takes its arms and slots from the drawing alone, and its result is a page of its own':
    [...['trial', 'trial_arm', 'trial_site', 'trial_slot', 'trial_note', 'trial_result']],
  'the network itself, in the descriptor': ['network', '_prisma_migrations'],
};
