"""Prints what python3-jsonschema says against each record: valid.py SCHEMA RECORD..., without a network."""
import json
import socket
import sys

from jsonschema import Draft202012Validator
from ruamel.yaml import YAML


def no_network(*_):
    raise OSError("a schema must be complete in itself")


socket.socket.connect = no_network
socket.getaddrinfo = no_network

yaml = YAML(typ="safe")  # YAML 1.2
# the core schema of YAML 1.2 has no timestamps (section 10.3.2): a date is text
constructors = yaml.constructor.yaml_constructors
constructors["tag:yaml.org,2002:timestamp"] = constructors["tag:yaml.org,2002:str"]

with open(sys.argv[1], encoding="utf-8") as file:
    schema = json.load(file)
Draft202012Validator.check_schema(schema)
validator = Draft202012Validator(schema)
for path in sys.argv[2:]:
    with open(path, encoding="utf-8") as file:
        for error in validator.iter_errors(yaml.load(file)):
            print(f"{path}: {error.json_path}: {error.message}")
