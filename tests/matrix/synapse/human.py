"""A human of the tests: a matrix-nio client (libolm), which shares no code with the adapter's library.

    synapse.sh python - human.py --url BASE --user NAME --password WORD --store FOLDER

Reads one JSON command a line ({"op": ..., "n": number}), writes one JSON line for each result and each event it
hears, until end of input. The folder keeps the device (keys, token): a later run is the same device. What needs no
keys (invites, kicks, states, forged events) the tests do over HTTP with the token of the "ready" line.
"""
import argparse
import asyncio
import base64
import json
import logging
import os
import sys

from nio import (AsyncClient, AsyncClientConfig, Event, InviteMemberEvent, LoginResponse, MegolmEvent, RoomCreateResponse,
                 RoomSendResponse, SyncResponse, ReceiptEvent, TypingNoticeEvent)
from nio.crypto.attachments import decrypt_attachment, encrypt_attachment

FILTER = {"room": {"timeline": {"limit": 1000}}, "presence": {"types": []}}


def need(response, kind, what):
    if not isinstance(response, kind):
        raise RuntimeError(f"{what}: {response}")
    return response


def say(o):
    sys.stdout.write(json.dumps(o) + "\n")
    sys.stdout.flush()


class Human:
    def __init__(self, url, user, password, store):
        self.url, self.user, self.password, self.store = url.rstrip("/"), user, password, store
        self.late = {}  # event id -> (room, MegolmEvent) that has no key yet
        self.changed = asyncio.Event()
        self.live = False  # False during the first sync: what is older is history
        os.makedirs(store, mode=0o700, exist_ok=True)

    async def start(self):
        path = os.path.join(self.store, "session.json")
        self.client = AsyncClient(self.url, self.user, store_path=self.store,
                                  config=AsyncClientConfig(encryption_enabled=True, request_timeout=60))
        if os.path.exists(path):
            with open(path) as f:
                s = json.load(f)
            self.client.restore_login(s["user_id"], s["device_id"], s["access_token"])
        else:
            r = need(await self.client.login(self.password, "human"), LoginResponse, "login")
            with open(path, "w") as f:
                json.dump({"user_id": r.user_id, "device_id": r.device_id, "access_token": r.access_token}, f)
        # nio leaves this to its caller, and without it no one can send it a room key
        if self.client.should_upload_keys:
            await self.client.keys_upload()
        self.client.add_event_callback(self._event, (Event, InviteMemberEvent))
        self.client.add_ephemeral_callback(self._typing, TypingNoticeEvent)
        self.client.add_ephemeral_callback(self._receipt, ReceiptEvent)
        need(await self.client.sync(timeout=0, sync_filter=FILTER, full_state=True), SyncResponse, "first sync")
        await self._after_sync()
        self.live = True
        self.task = asyncio.ensure_future(self._loop())

    async def _loop(self):
        while True:
            try:
                r = await self.client.sync(timeout=10000, sync_filter=FILTER)
                if not isinstance(r, SyncResponse):
                    await asyncio.sleep(0.3)
                await self._after_sync()
            except asyncio.CancelledError:
                raise
            except Exception as e:  # a restarted server must not end the human
                print(f"human: sync: {e!r}", file=sys.stderr)
                await asyncio.sleep(0.3)

    async def _after_sync(self):
        c = self.client
        if c.should_upload_keys:
            await c.keys_upload()
        if c.should_query_keys:
            await c.keys_query()
        if c.should_claim_keys:
            await c.keys_claim(c.get_users_for_key_claiming())
        await c.send_to_device_messages()
        for event_id, (room, event) in list(self.late.items()):  # nio never tries again by itself
            try:
                self._tell(room, c.decrypt_event(event), True)
                del self.late[event_id]
            except Exception:
                pass
        self.changed.set()

    async def _typing(self, room, event):
        say({"ev": "typing", "room": room.room_id, "users": list(event.users)})

    async def _receipt(self, room, event):
        for r in event.receipts:
            say({"ev": "receipt", "room": room.room_id, "user": r.user_id, "event_id": r.event_id})

    async def _event(self, room, event):
        if isinstance(event, InviteMemberEvent):
            if event.membership == "invite" and event.state_key == self.client.user_id:
                say({"ev": "invite", "room": room.room_id, "sender": event.sender})
        elif isinstance(event, MegolmEvent):
            self.late[event.event_id] = (room.room_id, event)
            self._tell(room.room_id, event, False)
        else:
            self._tell(room.room_id, event, bool(getattr(event, "decrypted", False)))
        self.changed.set()

    def _tell(self, room, event, decrypted):
        s = event.source
        say({"ev": "event", "event_id": event.event_id, "room": room, "sender": event.sender, "type": s.get("type"),
             "content": s.get("content") or {}, "state_key": s.get("state_key"), "redacts": s.get("redacts"),
             "decrypted": decrypted, "undecryptable": isinstance(event, MegolmEvent),
             "redacted": "redacted_because" in (s.get("unsigned") or {}), "ts": event.server_timestamp,
             "history": not self.live})

    async def wait_member(self, room, user, timeout=30):
        end = asyncio.get_running_loop().time() + timeout
        while True:
            r = self.client.rooms.get(room)
            if r and user in r.users and user not in r.invited_users:
                return True
            left = end - asyncio.get_running_loop().time()
            if left <= 0:
                raise RuntimeError(f"{user} did not join {room} within {timeout} s")
            self.changed.clear()
            try:
                await asyncio.wait_for(self.changed.wait(), min(left, 0.25))
            except asyncio.TimeoutError:
                pass

    async def create(self, name=None, encrypted=False, invite=(), rotate=None, direct=False):
        state = []
        if encrypted:
            content = {"algorithm": "m.megolm.v1.aes-sha2"}
            if rotate:
                content["rotation_period_msgs"] = rotate
            state = [{"type": "m.room.encryption", "state_key": "", "content": content}]
        r = need(await self.client.room_create(name=name, invite=list(invite), initial_state=state, is_direct=direct),
                 RoomCreateResponse, "create room")
        await self.wait_member(r.room_id, self.client.user_id, 20)
        return r.room_id

    async def join(self, room):
        r = await self.client.join(room)
        if not getattr(r, "room_id", None):
            raise RuntimeError(f"join {room}: {r}")
        await self.wait_member(r.room_id, self.client.user_id, 20)
        return r.room_id

    async def send(self, room, type, content, txn=None):
        r = await self.client.room_send(room, type, content, tx_id=txn, ignore_unverified_devices=True)
        return need(r, RoomSendResponse, f"send {type}").event_id

    async def rotate(self, room):
        """The next message begins a new Megolm session."""
        self.client.invalidate_outbound_session(room)

    async def trust(self, user, trusted):
        """Whether the devices of a person get the keys of what is said from now on."""
        for device in self.client.device_store.active_user_devices(user):
            (self.client.unblacklist_device if trusted else self.client.blacklist_device)(device)
        for room in self.client.rooms:
            self.client.invalidate_outbound_session(room)

    def _media(self, mxc):
        return f"{self.url}/_matrix/client/v1/media/download/{mxc.removeprefix('mxc://')}"

    async def download(self, mxc, file=None):
        """The content of a medium, decrypted where `file` is an EncryptedFile, as base64."""
        async with self.client.client_session.get(
                self._media(file["url"] if file else mxc),
                headers={"Authorization": f"Bearer {self.client.access_token}"}) as r:
            if r.status != 200:
                raise RuntimeError(f"download: {r.status}")
            data, kind = await r.read(), r.headers.get("Content-Type")
        if file:
            data = decrypt_attachment(data, file["key"]["k"], file["hashes"]["sha256"], file["iv"])
        return {"data": base64.b64encode(data).decode(), "type": kind}

    async def upload(self, data, type, encrypted=False):
        """Content as base64 to a medium: {url} or {file} of an event."""
        raw, keys = base64.b64decode(data), None
        if encrypted:
            raw, keys = encrypt_attachment(raw)
        async with self.client.client_session.post(
                f"{self.url}/_matrix/media/v3/upload", data=raw,
                headers={"Authorization": f"Bearer {self.client.access_token}",
                         "Content-Type": "application/octet-stream" if encrypted else type}) as r:
            url = (await r.json())["content_uri"]
        return {"file": {**keys, "url": url}} if keys else {"url": url}



OPS = {"create", "join", "send", "rotate", "trust", "download", "upload", "wait_member"}


async def main():
    p = argparse.ArgumentParser()
    for name in ("--url", "--user", "--password", "--store"):
        p.add_argument(name, required=True)
    a = p.parse_args()
    logging.getLogger("nio").setLevel(logging.ERROR)
    logging.getLogger("peewee").setLevel(logging.ERROR)
    human = Human(a.url, a.user, a.password, a.store)
    await asyncio.wait_for(human.start(), 60)  # nio itself tries for ever
    c = human.client
    say({"ev": "ready", "user": c.user_id, "device": c.device_id, "token": c.access_token})
    reader = asyncio.StreamReader(limit=1 << 24)
    await asyncio.get_running_loop().connect_read_pipe(lambda: asyncio.StreamReaderProtocol(reader), sys.stdin)
    running = set()

    async def do(line):
        command = json.loads(line)
        op, n = command.pop("op"), command.pop("n")
        try:
            if op not in OPS:
                raise RuntimeError(f"no operation {op}")
            say({"ev": "done", "n": n, "result": await getattr(human, op)(**command)})
        except Exception as e:
            say({"ev": "failed", "n": n, "error": f"{type(e).__name__}: {e}"})

    while line := await reader.readline():
        task = asyncio.ensure_future(do(line))
        running.add(task)
        task.add_done_callback(running.discard)
        if json.loads(line)["op"] == "send":
            await task  # in the order in which they were said
    human.task.cancel()
    await c.close()


asyncio.run(main())
