-- A recount groups all moves by the kinds of their places: some dozen groups. Without these statistics the planner expects
-- as many groups as there are places, and sorts millions of rows.
CREATE STATISTICS reel_history_kinds ON split_part(source, ':', 1), split_part(target, ':', 1) FROM reel_history;
CREATE STATISTICS batch_history_kinds ON split_part(source, ':', 1), split_part(target, ':', 1) FROM batch_history;
