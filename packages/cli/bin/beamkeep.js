#!/usr/bin/env node
import '../dist/run.js';
