-- The published catalogue: a SQLite database that anyone may query, without Benchlore too.
-- Numbers are in SI units (temperatures in °C, turns per minute, tracks per inch as such). Texts that are not stated are
-- NULL. `file` and `line` say where in the notes a row comes from. Indexes are made after the rows, wherever they stand.
PRAGMA user_version = 1;

CREATE TABLE shop (
  name TEXT, mains_voltage TEXT, mains_frequency TEXT, wording TEXT
);

-- Every sound note. `hash` is FNV-1a (64 bits) of the file's bytes; `text` is the body without mark-up.
CREATE TABLE note (
  id TEXT PRIMARY KEY, kind TEXT NOT NULL, title TEXT NOT NULL, file TEXT NOT NULL, line INTEGER NOT NULL,
  hash TEXT NOT NULL, text TEXT NOT NULL
);
CREATE TABLE tag (
  note TEXT NOT NULL REFERENCES note, tag TEXT NOT NULL, PRIMARY KEY (note, tag)
) WITHOUT ROWID;

-- One note named by another: in a field of its front matter, or (no field) by a link in its body.
CREATE TABLE link (
  note TEXT NOT NULL REFERENCES note, target TEXT NOT NULL REFERENCES note, field TEXT
);

-- What schema/ knows.
CREATE TABLE source (
  id TEXT PRIMARY KEY, title TEXT NOT NULL, publisher TEXT, trust TEXT, note TEXT REFERENCES note
);
CREATE TABLE class (
  name TEXT PRIMARY KEY, title TEXT NOT NULL, extends TEXT REFERENCES class, meaning TEXT
);
CREATE TABLE role (name TEXT PRIMARY KEY, title TEXT NOT NULL, meaning TEXT, safety INTEGER NOT NULL);
CREATE TABLE rule (
  name TEXT PRIMARY KEY, form TEXT NOT NULL, rating TEXT, falls_short TEXT NOT NULL, because TEXT, source TEXT
);

CREATE TABLE component (
  id TEXT PRIMARY KEY REFERENCES note, class TEXT REFERENCES class, maker TEXT, package TEXT, price TEXT,
  availability TEXT, in_stock INTEGER NOT NULL
);

-- Under which names a component is found. `sort` is id, title, marking, alias or cross-reference; `key` is the name in
-- lower case without blanks, hyphens, dots and slashes.
CREATE TABLE name (
  component TEXT NOT NULL REFERENCES component, sort TEXT NOT NULL, house TEXT, name TEXT NOT NULL, key TEXT NOT NULL
);

-- `nominal`, `minimum`, `typical`, `maximum` as stated; `low` and `high` bound what is guaranteed, tolerance included.
-- A rating in words has them in `text`, and no `unit`.
CREATE TABLE rating (
  component TEXT NOT NULL REFERENCES component, rating TEXT NOT NULL, text TEXT NOT NULL, unit TEXT,
  nominal REAL, minimum REAL, typical REAL, maximum REAL, low REAL, high REAL,
  conditions TEXT, source TEXT, file TEXT, line INTEGER,
  PRIMARY KEY (component, rating)
);

-- Where parts sit, and what the circuit does to them there.
CREATE TABLE position (
  board TEXT NOT NULL REFERENCES note, ref TEXT NOT NULL, component TEXT REFERENCES component, role TEXT, polarity TEXT,
  remark TEXT, file TEXT, line INTEGER,
  PRIMARY KEY (board, ref)
);
CREATE TABLE stress (
  board TEXT NOT NULL, ref TEXT NOT NULL, stress TEXT NOT NULL, text TEXT NOT NULL, unit TEXT,
  nominal REAL, minimum REAL, typical REAL, maximum REAL, low REAL, high REAL,
  conditions TEXT, source TEXT, file TEXT, line INTEGER,
  PRIMARY KEY (board, ref, stress), FOREIGN KEY (board, ref) REFERENCES position
);

-- Every declared substitute, judged: at a position, in some roles, or in general. `deciding` names ratings.
CREATE TABLE substitute (
  id INTEGER PRIMARY KEY, original TEXT NOT NULL REFERENCES component, substitute TEXT NOT NULL REFERENCES component,
  roles TEXT, role TEXT, board TEXT, ref TEXT,
  verdict TEXT NOT NULL CHECK (verdict IN ('unsafe', 'unfit', 'unknown', 'conditional', 'suitable')),
  deciding TEXT, file TEXT, line INTEGER,
  FOREIGN KEY (board, ref) REFERENCES position
);
CREATE TABLE reason (
  substitute INTEGER NOT NULL REFERENCES substitute, number INTEGER NOT NULL, rule TEXT REFERENCES rule,
  about TEXT NOT NULL, rating TEXT, outcome TEXT NOT NULL, verdict TEXT NOT NULL, original_value TEXT,
  substitute_value TEXT, required TEXT, margin REAL, by_tolerance INTEGER NOT NULL, working TEXT, action TEXT,
  only_in_role TEXT, because TEXT, source TEXT,
  PRIMARY KEY (substitute, number)
) WITHOUT ROWID;
CREATE TABLE condition (
  substitute INTEGER NOT NULL REFERENCES substitute, number INTEGER NOT NULL, condition TEXT NOT NULL,
  PRIMARY KEY (substitute, number)
) WITHOUT ROWID;

-- What people say for a symptom, and which faults show it how often.
CREATE TABLE said (symptom TEXT NOT NULL REFERENCES note, words TEXT NOT NULL);
CREATE TABLE fault_symptom (
  fault TEXT NOT NULL REFERENCES note, symptom TEXT NOT NULL REFERENCES note, likelihood TEXT
);

CREATE TABLE stock (
  component TEXT NOT NULL REFERENCES component, quantity INTEGER NOT NULL, bin TEXT, taken_from TEXT, line INTEGER
);

-- What the checker found when this was built.
CREATE TABLE finding (
  rule TEXT NOT NULL, severity TEXT NOT NULL, verdict TEXT, subject TEXT, file TEXT, line INTEGER, column INTEGER,
  message TEXT NOT NULL, way_out TEXT, accepted_because TEXT, accepted_by TEXT, accepted_on TEXT
);

CREATE VIEW part AS
  SELECT component.id, note.title, component.class, class.title AS class_title, component.in_stock, note.file
  FROM component JOIN note ON note.id = component.id LEFT JOIN class ON class.name = component.class;

CREATE VIEW usable_substitute AS
  SELECT original, substitute, roles, board, ref, verdict, component.in_stock
  FROM substitute JOIN component ON component.id = substitute.substitute
  WHERE verdict IN ('suitable', 'conditional');

CREATE VIEW unsafe_substitute AS
  SELECT original, substitute, roles, board, ref, deciding, file, line FROM substitute WHERE verdict = 'unsafe';

CREATE INDEX note_by_kind ON note (kind, title);
CREATE INDEX tag_by_tag ON tag (tag);
CREATE INDEX link_by_note ON link (note);
CREATE INDEX link_by_target ON link (target);
CREATE INDEX component_by_class ON component (class);
CREATE INDEX name_by_key ON name (key);
CREATE INDEX name_by_component ON name (component);
CREATE INDEX rating_by_value ON rating (rating, nominal, component);
CREATE INDEX position_by_component ON position (component);
CREATE INDEX substitute_by_original ON substitute (original);
CREATE INDEX substitute_by_substitute ON substitute (substitute);
CREATE INDEX fault_symptom_by_symptom ON fault_symptom (symptom);
CREATE INDEX fault_symptom_by_fault ON fault_symptom (fault);
CREATE INDEX stock_by_component ON stock (component);
CREATE INDEX finding_by_subject ON finding (subject);
