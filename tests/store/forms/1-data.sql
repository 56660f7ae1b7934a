insert into owner (id, erase_at) values ('ownerAAAAAAAAAAA', null), ('roomBBBBBBBBBBBB', 1795700000000);
insert into account (kind, platform, name, owner) values
  ('person', 'discord', '4711', 'ownerAAAAAAAAAAA'),
  ('person', 'matrix', '@ash:example.org', 'ownerAAAAAAAAAAA'),
  ('room', 'discord', 'kitchen', 'roomBBBBBBBBBBBB');
insert into joined (old, owner) values ('oldCCCCCCCCCCCCC', 'ownerAAAAAAAAAAA');
insert into document (owner, kind, key, data, version, saved_at, until) values
  ('ownerAAAAAAAAAAA', 'recipe', 'kitchen soap', '{"name":"Kitchen soap 🧼","text":"500 g lard\u0000"}', 3, 1795600000000, null),
  ('ownerAAAAAAAAAAA', 'batch', 'lot-7', '{"lot":"lot-7"}', 1, 1795600000001, null),
  ('roomBBBBBBBBBBBB', 'settings', 'own', '{"unit":"oz"}', 1, 1795600000002, null);
insert into reminder
  (owner, id, due_at, ring_at, set_at, attempts, platform, place, person, address, about, batch)
values
  ('ownerAAAAAAAAAAA', 'bell', 1795600000100, 1795600000200, 1795600000003, 1,
   'discord', 'kitchen', '4711', 'thread', '{"kind":"timer"}', 'lot-7');
insert into link_code (code, owner, until) values ('ABCD1234', 'ownerAAAAAAAAAAA', 1795600900000);
insert into value (space, key, value, until) values ('matrix', 'since', 's42', null);
