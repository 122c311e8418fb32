"""Times SciPy's find_peaks on an array of doubles in a file, once a line on standard input; answers seconds of its processor."""
import sys
import time

import numpy
from scipy.signal import find_peaks

arrays = {}
print("ready", flush=True)
for line in sys.stdin:
    path, prominence, width = line.split()
    if path not in arrays:
        arrays[path] = numpy.fromfile(path, dtype="<f8")
    began = time.process_time()
    find_peaks(arrays[path], prominence=float(prominence), width=float(width))
    print(time.process_time() - began, flush=True)
